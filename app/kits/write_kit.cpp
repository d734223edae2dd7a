#include "kits/write_kit.h"

#include <QFileInfo>

#include "bridge/label_text.h"
#include "kits/kit_csv.h"
#include "kits/kit_pages.h"
#include "kits/kit_words.h"
#include "output/pdf_export.h"
#include "output/write_bytes.h"

namespace creasewright {

namespace {

QString planEnding(const QString& path) { return QFileInfo(path).suffix().toLower(); }

Result<QByteArray> bytesFor(const ClassKit& kit, const QString& path, const KitChoices& choices,
                            const KitPlan* known, const PlanOptions& options) {
  const QString ending = planEnding(path);
  if (ending == QLatin1String("cwkit")) {
    return kitBytes(kit, path);
  }
  const Result<KitPlan> plan = known != nullptr ? Result<KitPlan>(*known) : planKit(kit, options);
  if (!plan) {
    return plan.problem();
  }
  if (ending == QLatin1String("json")) {
    return QByteArray::fromStdString(kitJson(kit, *plan, oneMoreFor(kit, *plan)));
  }
  if (ending == QLatin1String("csv")) {
    return kitCsv(kit, *plan);
  }
  return kitPdf(kit, *plan, choices);
}

}  // namespace

Result<QByteArray> kitBytes(const ClassKit& kit, const QString& path) {
  const Result<std::string> text = kitFileText(kit, path.toStdString());
  return text ? Result<QByteArray>(QByteArray::fromStdString(*text)) : text.problem();
}

Result<QByteArray> kitPdf(const ClassKit& kit, const KitPlan& plan, const KitChoices& choices) {
  return renderPdf(kitPages(kit, plan, findingsFor(kit, plan), choices.unit, choices.paper),
                   wordingIn(choices.unit), {kitTitle(kit), choices.now});
}

QStringList kitEndings() {
  return {QStringLiteral("pdf"), QStringLiteral("json"), QStringLiteral("csv"),
          QStringLiteral("cwkit")};
}

std::optional<Problem> writeKitPlan(const ClassKit& kit, const QString& path,
                                    const KitChoices& choices, const KitPlan* plan,
                                    const PlanOptions& options) {
  if (!kitEndings().contains(planEnding(path))) {
    return Problem{ProblemCode::FileNotWritten,
                   path.toStdString(),
                   {KitTr::tr("the name must end in .pdf, .json, .csv or .cwkit").toStdString()}};
  }
  return writeBytes(path, bytesFor(kit, path, choices, plan, options));
}

}  // namespace creasewright
