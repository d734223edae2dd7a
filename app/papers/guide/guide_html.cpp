#include "papers/guide/guide_html.h"

#include <QRegularExpression>
#include <set>

#include "base/base64.h"
#include "bridge/decode_picture.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "drawing/svg_writer.h"
#include "drawing/xml_text.h"
#include "guide/make_guide.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_photos.h"

namespace creasewright {

namespace {

const char* const kLook = R"(
:root { color-scheme: light; }
body { font: 1rem/1.5 system-ui, sans-serif; color: #23282e; background: #fff; margin: 0; }
main { max-width: 52rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.8rem; line-height: 1.2; margin: .5rem 0; overflow-wrap: anywhere; }
h2 { font-size: 1.25rem; margin: 1.6rem 0 .4rem; color: #005f48; }
h3 { font-size: 1.05rem; margin: 0 0 .3rem; }
svg { width: 100%; height: auto; max-height: 22rem; display: block; }
figure { margin: 0; }
ul { margin: .3rem 0; padding-left: 1.2rem; }
ol.steps { list-style: none; margin: 0; padding: 0; }
ol.steps > li { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1.1fr); gap: 1.2rem;
  padding: 1rem 0; border-top: 1px solid #d8dbde; break-inside: avoid; }
.photo img { max-width: 100%; max-height: 24rem; width: auto; height: auto; display: block; margin: .6rem 0 .2rem; }
.photo figcaption { font-size: .85em; color: #4a5a68; }
.facts { display: flex; flex-wrap: wrap; gap: .2rem 1.4rem; margin: .3rem 0; padding: 0; color: #4a5560; }
.facts > * { margin: 0; }
.detail { font-size: 0.85em; color: #4a5a68; }
.checks { color: #005f48; list-style: none; padding-left: 0; }
.checks li::before { content: "\2713\00a0"; }
.care { border-left: .3rem solid #b35a00; padding-left: .8rem; }
p { margin: .3rem 0; }
@media (max-width: 34rem) { ol.steps > li { grid-template-columns: minmax(0, 1fr); } }
@media print { main { max-width: none; padding: 0; } body { font-size: 10pt; } }
)";

QString hex(Colour colour) { return toColor(colour).name().toUpper(); }

/// Words of pictures in the tones that large print has on paper.
QString darkWords(const PaintLook& look) {
  QString rules;
  std::set<QString> told;
  for (const Role role : paintOrder()) {
    TextItem word;
    word.role = role;
    const QString usual = hex(textColour(word));
    const QString dark = hex(wordColour(word, look));
    if (usual != dark && told.insert(usual).second)
      rules += QStringLiteral("svg text[fill=\"%1\"] { fill: %2; }\n").arg(usual, dark);
  }
  return rules;
}

/// What the form changes, after all the rest.
QString formLook(const GuideForm& form) {
  QString look;
  if (form.size != GuideSize::Standard) {
    const int points = form.size == GuideSize::Large ? 18 : 14;
    look +=
        QStringLiteral(":root { font-size: %1pt; }\n@media print { body { font-size: %1pt; } }\n")
            .arg(points);
  }
  if (form.size == GuideSize::Large)
    look += QStringLiteral(
        ".detail { font-size: 1em; color: #23282e; }\n"
        "ol.steps > li { grid-template-columns: minmax(0, 1fr); }\n");
  look += darkWords(lookOf(form));
  if (form.black)
    look += QStringLiteral(
        "svg { filter: grayscale(1) contrast(1.2); }\n"
        "svg .printed { display: none; }\n"
        "img { filter: grayscale(1); }\n"
        "body, h2, .checks, .detail, .facts { color: #000; }\n"
        ".care { border-color: #000; }\n");
  return look;
}

QString escaped(const QString& words) { return text(xmlText(words.toStdString())); }

/// The picture as part of a page: its groups' ids would stand there more than once.
QString inlineSvg(const Drawing& drawing, const QString& title, const Wording& wording) {
  QString svg = QString::fromStdString(writeSvg(drawing, title.toStdString(), wording));
  svg.remove(0, svg.indexOf(QLatin1String("<svg")));
  static const QRegularExpression ids(QStringLiteral(" id=\"[^\"]*\""));
  static const QRegularExpression size(
      QStringLiteral("^<svg([^>]*) width=\"[^\"]*\" height=\"[^\"]*\""));
  svg.remove(ids);
  svg.replace(size, QStringLiteral("<svg\\1 role=\"img\""));
  return QStringLiteral("<figure>") + svg + QStringLiteral("</figure>\n");
}

QString photoFigure(const std::optional<GuidePhoto>& shown) {
  if (!shown) return {};
  const PictureFile& file = shown->photo->picture;
  const QSize size = pictureSize(file);
  const std::string data =
      "data:" + std::string(mediaType(file.kind().value_or(PictureKind::Jpeg))) + ";base64," +
      toBase64(file.bytes());
  QString out =
      QStringLiteral("<figure class=\"photo\"><img alt=\"%1\" width=\"%2\" height=\"%3\" src=\"")
          .arg(escaped(shown->alt))
          .arg(size.width())
          .arg(size.height()) +
      QString::fromStdString(data) + QStringLiteral("\" />");
  if (!shown->caption.isEmpty())
    out +=
        QStringLiteral("<figcaption>") + escaped(shown->caption) + QStringLiteral("</figcaption>");
  return out + QStringLiteral("</figure>\n");
}

QString list(const QStringList& lines, const char* look = "") {
  QString out = QStringLiteral("<ul%1>\n").arg(QLatin1String(look));
  for (const QString& line : lines)
    out += QStringLiteral("<li>") + escaped(line) + QStringLiteral("</li>\n");
  return out + QStringLiteral("</ul>\n");
}

QString heading(const QString& words) {
  return QStringLiteral("<h2>") + escaped(words) + QStringLiteral("</h2>\n");
}

QString head(const GuideWords& words, const BuiltDesign& built, const GuidePhotos& photos,
             const Wording& wording) {
  QString out = QStringLiteral("<h1>%1</h1>\n<div class=\"facts\">").arg(escaped(words.title));
  for (const QString& fact : {words.style, words.size, words.level, words.time, words.hand})
    if (!fact.isEmpty()) out += QStringLiteral("<p>") + escaped(fact) + QStringLiteral("</p>");
  out += QStringLiteral("</div>\n");
  return out +
         inlineSvg(finishedFigure(built, {120, 80}), GuideTr::tr("The finished piece"), wording) +
         photoFigure(photos.finished);
}

QString stepItem(int number, const StepWords& words, const Drawing& figure,
                 const std::optional<GuidePhoto>& photo, const Wording& wording) {
  QString out = QStringLiteral("<li>\n");
  out +=
      inlineSvg(figure, GuideTr::tr("Figure of step %1: %2").arg(number).arg(words.title), wording);
  out += QStringLiteral("<div>\n<h3>%1. %2</h3>\n").arg(number).arg(escaped(words.title));
  for (const QString& sentence : words.sentences)
    out += QStringLiteral("<p>") + escaped(sentence) + QStringLiteral("</p>\n");
  for (const QString& detail : words.details)
    out += QStringLiteral("<p class=\"detail\">") + escaped(detail) + QStringLiteral("</p>\n");
  if (!words.checks.isEmpty()) out += list(words.checks, " class=\"checks\"");
  return out + photoFigure(photo) + QStringLiteral("</div>\n</li>\n");
}

}  // namespace

QByteArray guideHtml(const BuiltDesign& built, GuideUnits units, const QString& language,
                     const GuideForm& form, const GuideNote& note) {
  const Guide guide = makeGuide(built, form.hand);
  const GuideWords words = wordGuide(guide, built, units);
  const Wording wording = wordingIn(firstUnit(units));
  QString out = QStringLiteral(
                    "<!DOCTYPE html>\n<html lang=\"%1\">\n<head>\n<meta charset=\"utf-8\">\n<meta "
                    "name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                    .arg(escaped(language));
  out += QStringLiteral("<title>") + escaped(words.title) + QStringLiteral("</title>\n<style>") +
         QLatin1String(kLook) + formLook(form) +
         QStringLiteral("</style>\n</head>\n<body>\n<main>\n");
  const GuidePhotos photos(guide, built);
  out += head(words, built, photos, wording);
  out += heading(suppliesHeading()) + list(words.supplies);
  out += heading(toolsHeading()) + list(words.tools);
  out += heading(cautionsHeading()) + list(words.cautions, " class=\"care\"");
  out += heading(stepsHeading()) + QStringLiteral("<ol class=\"steps\">\n");
  for (std::size_t i = 0; i < words.steps.size(); ++i) {
    out += stepItem(static_cast<int>(i) + 1, words.steps[i], guideFigure(built, guide.steps[i]),
                    photos.steps[i], wording);
  }
  out += QStringLiteral("</ol>\n");
  if (!note.lines.isEmpty()) out += heading(note.heading) + list(note.lines);
  out += QStringLiteral("</main>\n</body>\n</html>\n");
  return out.toUtf8();
}

}  // namespace creasewright
