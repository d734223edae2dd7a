#include "kits/machine_files.h"

#include "bridge/label_text.h"
#include "bridge/text.h"
#include "drawing/svg_writer.h"
#include "kits/kit_words.h"
#include "kits/machine_layouts.h"
#include "output/write_folder.h"

namespace creasewright {

namespace {

/// A card's name as a part of a file's name.
QString plainName(const Card& card) {
  QString out;
  for (const QChar c : text(card.id.empty() ? card.name : card.id)) {
    out += c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
  }
  return out;
}

}  // namespace

std::optional<Problem> writeMachineFolder(const ClassKit& kit, const QString& folder,
                                          const MachineChoices& choices) {
  const Result<std::vector<MachinePlan>> plans =
      planMachine(kit, choices.width, choices.height, choices.nesting);
  if (!plans) {
    return plans.problem();
  }
  FolderFiles files;
  for (const MachinePlan& plan : *plans) {
    for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
      const int count = plan.layouts[i].count;
      const QString title =
          KitTr::tr("%1, mat %2: cut %n sheet(s)", "", count).arg(text(plan.card.name)).arg(i + 1);
      files.emplace_back(
          QStringLiteral("%1-mat-%2-x%3.svg").arg(plainName(plan.card)).arg(i + 1).arg(count),
          QByteArray::fromStdString(
              writeSvg(plan.drawings[i], title.toStdString(), wordingIn(Unit::Millimetre))));
    }
  }
  return writeFolder(folder, files);
}

}  // namespace creasewright
