#include "papers/kit/write_kit.h"

#include <QFileInfo>

#include "bridge/label_text.h"
#include "kits/plan_kit.h"
#include "output/pdf_export.h"
#include "output/write_bytes.h"
#include "papers/kit/kit_csv.h"
#include "papers/kit/kit_pages.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

QString planEnding(const QString& path) { return QFileInfo(path).suffix().toLower(); }

Result<QByteArray> bytesFor(const KitPlan& plan, const QString& path, const KitChoices& choices) {
  if (namesKit(path)) return kitBytes(plan.kit(), path);
  const QString ending = planEnding(path);
  if (ending == QLatin1String("json")) return QByteArray::fromStdString(kitJson(plan));
  if (ending == QLatin1String("csv")) return kitCsv(plan);
  return kitPdf(plan, choices);
}

}  // namespace

Result<QByteArray> kitBytes(const ClassKit& kit, const QString& path) {
  const Result<std::string> text = kitFileText(kit, path.toStdString());
  return text ? Result<QByteArray>(QByteArray::fromStdString(*text)) : text.problem();
}

Result<QByteArray> kitPdf(const KitPlan& plan, const KitChoices& choices) {
  return renderPdf(kitPages(plan, choices.unit, choices.paper), wordingIn(choices.unit),
                   {kitTitle(plan.kit()), choices.now});
}

QStringList kitEndings() {
  return {QStringLiteral("pdf"), QStringLiteral("json"), QStringLiteral("csv"),
          QStringLiteral("cwkit")};
}

bool namesKit(const QString& path) { return planEnding(path) == QLatin1String("cwkit"); }

std::optional<Problem> writeKitFile(const ClassKit& kit, const QString& path) {
  return writeBytes(path, kitBytes(kit, path));
}

std::optional<Problem> writeKitPlan(const KitPlan& plan, const QString& path,
                                    const KitChoices& choices) {
  if (!kitEndings().contains(planEnding(path))) {
    return Problem{ProblemCode::FileNotWritten,
                   path.toStdString(),
                   {KitTr::tr("the name must end in .pdf, .json, .csv or .cwkit").toStdString()}};
  }
  return writeBytes(path, bytesFor(plan, path, choices));
}

}  // namespace creasewright
