#include "kits/class_folder.h"

#include "document/build.h"
#include "guide/write_guide.h"
#include "kits/kit_csv.h"
#include "kits/kit_words.h"
#include "output/write_folder.h"
#include "printing/export.h"

namespace creasewright {

namespace {

std::optional<Problem> addDesign(const KitItem& item, qsizetype number, const KitChoices& choices,
                                 FolderFiles& files) {
  const Result<BuiltDesign> built = build(item.design);
  if (!built) {
    return built.problem();
  }
  ExportChoices paper;
  paper.setup.paper = choices.paper;
  paper.unit = choices.unit;
  paper.now = choices.now;
  const Result<QByteArray> sheets = templatePdf(*built, paper);
  if (!sheets) {
    return sheets.problem();
  }
  GuideChoices words;
  words.paper = choices.paper;
  words.now = choices.now;
  const Result<QByteArray> guide = guidePdf(*built, words);
  if (!guide) {
    return guide.problem();
  }
  const QString name = QStringLiteral("%1-%2").arg(number).arg(fileNamePart(itemTitle(item)));
  files.emplace_back(QStringLiteral("template-%1.pdf").arg(name), *sheets);
  files.emplace_back(QStringLiteral("guide-%1.pdf").arg(name), *guide);
  return std::nullopt;
}

}  // namespace

std::optional<Problem> writeClassFolder(const ClassKit& kit, const QString& folder,
                                        const KitChoices& choices, const KitPlan* known,
                                        const PlanOptions& options) {
  const Result<QByteArray> saved = kitBytes(kit, folder + QStringLiteral("/class.cwkit"));
  if (!saved) {
    return saved.problem();
  }
  const Result<KitPlan> plan = known != nullptr ? Result<KitPlan>(*known) : planKit(kit, options);
  if (!plan) {
    return plan.problem();
  }
  const Result<QByteArray> pages = kitPdf(kit, *plan, choices);
  if (!pages) {
    return pages.problem();
  }
  FolderFiles files{{QStringLiteral("plan.pdf"), *pages},
                    {QStringLiteral("plan.csv"), kitCsv(kit, *plan)},
                    {QStringLiteral("class.cwkit"), *saved}};
  qsizetype number = 0;
  for (const KitItem& item : kit.items) {
    ++number;
    if (!item.piece.empty()) {
      continue;
    }
    if (const auto problem = addDesign(item, number, choices, files)) {
      return problem;
    }
  }
  return writeFolder(folder, files);
}

}  // namespace creasewright
