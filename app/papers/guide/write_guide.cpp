#include "papers/guide/write_guide.h"

#include <QFileInfo>

#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "output/pdf_export.h"
#include "output/write_bytes.h"
#include "papers/guide/guide_folder.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/guide_pages.h"

namespace creasewright {

namespace {

Result<QByteArray> bytesFor(const BuiltDesign& built, const QString& ending,
                            const GuideChoices& choices) {
  if (ending == QLatin1String("html"))
    return guideHtml(built, choices.units, choices.language, choices.form);
  return guidePdf(built, choices);
}

}  // namespace

Result<QByteArray> guidePdf(const BuiltDesign& built, const GuideChoices& choices) {
  return renderPdf(guidePages(built, choices.units, choices.paper, choices.form),
                   wordingIn(firstUnit(choices.units)),
                   {designTitle(built), choices.now, PdfKind::Document, lookOf(choices.form)});
}

QStringList guideEndings() { return {QStringLiteral("pdf"), QStringLiteral("html")}; }

bool namesGuideFolder(const QString& path) {
  return path.endsWith(QLatin1Char('/')) || QFileInfo(path).isDir() ||
         QFileInfo(path).suffix().isEmpty();
}

std::optional<Problem> writeGuide(const BuiltDesign& built, const QString& path,
                                  const GuideChoices& choices) {
  if (namesGuideFolder(path)) return writeGuideFolder(built, choices.units, path);
  const QString ending = QFileInfo(path).suffix().toLower();
  if (!guideEndings().contains(ending)) {
    return Problem{ProblemCode::FileNotWritten,
                   path.toStdString(),
                   {GuideTr::tr("the name must end in .pdf or .html").toStdString()}};
  }
  return writeBytes(path, bytesFor(built, ending, choices));
}

}  // namespace creasewright
