#include "kits/write_kit.h"

#include <QFile>
#include <QFileInfo>

#include "bridge/label_text.h"
#include "document/file_io.h"
#include "kits/kit_csv.h"
#include "kits/kit_pages.h"
#include "kits/kit_words.h"
#include "output/pdf_export.h"

namespace creasewright {

namespace {

Result<QByteArray> bytesFor(const ClassKit& kit, const QString& ending, const KitChoices& choices) {
  if (ending == QLatin1String("cwkit")) {
    return QByteArray::fromStdString(writeKit(kit));
  }
  const Result<KitPlan> plan = planKit(kit);
  if (!plan) {
    return plan.problem();
  }
  if (ending == QLatin1String("json")) {
    return QByteArray::fromStdString(kitJson(kit, *plan));
  }
  if (ending == QLatin1String("csv")) {
    return kitCsv(kit, *plan);
  }
  return renderPdf(kitPages(kit, *plan, sheetsForOneMore(kit, *plan), choices.unit, choices.paper),
                   wordingIn(choices.unit), {kitTitle(kit), choices.now});
}

}  // namespace

QStringList kitEndings() {
  return {QStringLiteral("pdf"), QStringLiteral("json"), QStringLiteral("csv"),
          QStringLiteral("cwkit")};
}

std::optional<Problem> writeKitPlan(const ClassKit& kit, const QString& path,
                                    const KitChoices& choices) {
  const QString ending = QFileInfo(path).suffix().toLower();
  if (!kitEndings().contains(ending)) {
    return Problem{ProblemCode::FileNotWritten,
                   path.toStdString(),
                   {KitTr::tr("the name must end in .pdf, .json, .csv or .cwkit").toStdString()}};
  }
  const Result<QByteArray> bytes = bytesFor(kit, ending, choices);
  if (!bytes) {
    Problem problem = bytes.problem();
    if (problem.code == ProblemCode::FileNotWritten) {
      problem.where = path.toStdString();
    }
    return problem;
  }
  return writeFileAtomically(QFile::encodeName(path).toStdString(),
                             {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

}  // namespace creasewright
