#include "papers/kit/class_folder.h"

#include "output/write_folder.h"
#include "papers/guide/write_guide.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_words.h"
#include "papers/template/export.h"

namespace creasewright {

namespace {

std::optional<Problem> addDesign(const BuiltKit& kit, std::size_t index, const KitChoices& choices,
                                 FolderFiles& files) {
  const BuiltDesign& built = kit.items[index]->design;
  ExportChoices paper;
  paper.setup.paper = choices.paper;
  paper.unit = choices.unit;
  paper.now = choices.now;
  const Result<QByteArray> sheets = templatePdf(built, paper);
  if (!sheets) return sheets.problem();
  GuideChoices words;
  words.paper = choices.paper;
  words.now = choices.now;
  const Result<QByteArray> guide = guidePdf(built, words);
  if (!guide) return guide.problem();
  const QString name =
      QStringLiteral("%1-%2").arg(index + 1).arg(fileNamePart(itemTitle(kit.kit.items[index])));
  files.emplace_back(QStringLiteral("template-%1.pdf").arg(name), *sheets);
  files.emplace_back(QStringLiteral("guide-%1.pdf").arg(name), *guide);
  return std::nullopt;
}

}  // namespace

std::optional<Problem> writeClassFolder(const KitPlan& plan, const QString& folder,
                                        const KitChoices& choices) {
  const ClassKit& kit = plan.kit();
  const Result<QByteArray> saved = kitBytes(kit, folder + QStringLiteral("/class.cwkit"));
  if (!saved) return saved.problem();
  const Result<QByteArray> pages = kitPdf(plan, choices);
  if (!pages) return pages.problem();
  FolderFiles files{{QStringLiteral("plan.pdf"), *pages},
                    {QStringLiteral("plan.csv"), kitCsv(plan)},
                    {QStringLiteral("class.cwkit"), *saved}};
  for (std::size_t i = 0; i < kit.items.size(); ++i) {
    if (!kit.items[i].piece.empty()) continue;
    if (const auto problem = addDesign(*plan.built, i, choices, files)) return problem;
  }
  return writeFolder(folder, files);
}

}  // namespace creasewright
