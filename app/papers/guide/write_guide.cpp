#include "papers/guide/write_guide.h"

#include <QFileInfo>
#include <array>

#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "output/pdf_export.h"
#include "output/write_bytes.h"
#include "papers/guide/guide_folder.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/guide_pages.h"
#include "papers/guide/measure_card.h"
#include "papers/guide/talk_sheet.h"

namespace creasewright {

Result<QByteArray> guideBytes(const BuiltDesign& built, const QString& ending,
                              const GuideChoices& choices) {
  if (ending == QLatin1String("html"))
    return guideHtml(built, choices.units, choices.language, choices.form, choices.note);
  return guidePdf(built, choices);
}

std::span<const GuideKindName> guideKinds() {
  static const std::array kinds{GuideKindName{"steps", GuideKind::Steps},
                                GuideKindName{"measures", GuideKind::Measures},
                                GuideKindName{"talk", GuideKind::Talk}};
  return kinds;
}

std::vector<Drawing> guideSheets(const BuiltDesign& built, const GuideChoices& choices) {
  switch (choices.kind) {
    case GuideKind::Steps:
      return guidePages(built, choices.units, choices.paper, choices.form, choices.note);
    case GuideKind::Measures:
      return {measureCard(built, choices.units, choices.paper, choices.form, choices.note)};
    case GuideKind::Talk:
      return talkSheet(built, choices.units, choices.paper, choices.form, choices.note);
  }
  return {};
}

Result<QByteArray> guidePdf(const BuiltDesign& built, const GuideChoices& choices) {
  return renderPdf(guideSheets(built, choices), wordingIn(firstUnit(choices.units)),
                   {designTitle(built), choices.now, PdfKind::Document, lookOf(choices.form)});
}

QStringList guideEndings() { return {QStringLiteral("pdf"), QStringLiteral("html")}; }

bool namesGuideFolder(const QString& path) {
  return path.endsWith(QLatin1Char('/')) || QFileInfo(path).isDir() ||
         QFileInfo(path).suffix().isEmpty();
}

std::optional<Problem> writeGuide(const BuiltDesign& built, const QString& path,
                                  const GuideChoices& choices) {
  if (namesGuideFolder(path)) return writeGuideFolder(built, path, choices);
  const QString ending = QFileInfo(path).suffix().toLower();
  if (!guideEndings().contains(ending)) {
    return Problem{ProblemCode::FileNotWritten,
                   path.toStdString(),
                   {GuideTr::tr("the name must end in .pdf or .html").toStdString()}};
  }
  return writeBytes(path, guideBytes(built, ending, choices));
}

}  // namespace creasewright
