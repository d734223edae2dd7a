#include "papers/guide/guide_html.h"

#include <QRegularExpression>
#include <set>

#include "base/base64.h"
#include "bridge/decode_picture.h"
#include "bridge/label_text.h"
#include "bridge/text.h"
#include "drawing/in_black.h"
#include "drawing/svg_writer.h"
#include "drawing/xml_text.h"
#include "guide/make_guide.h"
#include "pages/guide_figure.h"
#include "papers/guide/guide_parts.h"
#include "papers/guide/guide_photos.h"

namespace creasewright {

namespace {

constexpr FigureRoom kMap{126, 100};  // mm
constexpr FigureRoom kCell{66, 52};   // mm

const char* const kLook = R"(
:root { color-scheme: light; }
body { font: 1rem/1.5 system-ui, sans-serif; color: #23282e; background: #fff; margin: 0; }
main { max-width: 62rem; margin: 0 auto; padding: 1rem; }
h1 { font-size: 1.8rem; line-height: 1.2; margin: .5rem 0; overflow-wrap: anywhere; }
h2 { font-size: 1.25rem; margin: 1.6rem 0 .4rem; color: #005f48; }
h3 { font-size: 1.05rem; line-height: 1.3; margin: .5rem 0 .3rem; padding-left: 2.1rem; text-indent: -2.1rem; }
.no { display: inline-block; box-sizing: border-box; min-width: 1.7rem; height: 1.7rem; line-height: 1.7rem;
  margin-right: .4rem; padding: 0 .3rem; border-radius: .85rem; background: #005f48; color: #fff;
  text-align: center; text-indent: 0; font-size: .95rem; }
svg { width: 100%; height: auto; max-height: 18rem; display: block; }
.finished svg { max-height: 22rem; }
.map svg { max-height: 34rem; }
figure { margin: 0; }
ul { margin: .3rem 0; padding-left: 1.2rem; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
td { padding: .25rem .6rem .25rem 0; border-bottom: 1px solid #d8dbde; vertical-align: top; }
td:first-child, .size { font-weight: bold; }
.map { display: grid; grid-template-columns: minmax(0, 1.4fr) minmax(0, 1fr); gap: 1.2rem 1.6rem;
  padding: 1.2rem 0; border-top: 1px solid #d8dbde; }
.grid { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr)); gap: 1.6rem;
  padding: 1.2rem 0; border-top: 1px solid #d8dbde; }
.grid article > figure:first-child { display: flex; align-items: flex-end; height: 12rem; }
.grid article > figure:first-child svg { max-height: 12rem; }
article { break-inside: avoid; }
.map article + article { margin-top: 1.2rem; }
.photo img { max-width: 100%; max-height: 24rem; width: auto; height: auto; display: block; margin: .6rem 0 .2rem; }
.photo figcaption { font-size: .85em; color: #4a5a68; }
.facts { display: flex; flex-wrap: wrap; gap: .2rem 1.4rem; margin: .3rem 0; padding: 0; color: #4a5560; }
.facts > * { margin: 0; }
.detail { font-size: 0.85em; color: #4a5a68; }
.checks { color: #005f48; list-style: none; padding-left: 1.2rem; text-indent: -1.2rem; }
.checks li::before { content: "\2713\00a0"; }
.care { border-left: .3rem solid #b35a00; padding-left: .8rem; list-style: none; }
p { margin: .3rem 0; }
@media (max-width: 40rem) { .map { grid-template-columns: minmax(0, 1fr); } }
@media (max-width: 34rem) {
  .grid article > figure:first-child { height: auto; }
  .parts td:nth-child(5) { display: block; grid-column: 2 / -1; }
  .parts tr { display: grid; grid-template-columns: 1.6rem 1fr auto auto; border-bottom: 1px solid #d8dbde; }
  .parts td { border: 0; }
}
@media print {
  main { max-width: none; padding: 0; }
  body { font-size: 10pt; }
  .map { break-inside: avoid; }
  .grid { grid-template-columns: repeat(3, 1fr); }
}
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
        ".map, .grid { grid-template-columns: minmax(0, 1fr); }\n"
        "@media print { .grid { grid-template-columns: minmax(0, 1fr); } }\n");
  look += darkWords(lookOf(form));
  if (form.black)
    look += QStringLiteral(
        "img { filter: grayscale(1); }\n"
        "body, h2, .checks, .detail, .facts { color: #000; }\n"
        ".care { border-color: #000; }\n"
        ".no { background: #000; }\n");
  return look;
}

QString escaped(const QString& words) { return text(xmlText(words.toStdString())); }

/// The picture as part of a page: its groups' ids would stand there more than once.
QString inlineSvg(const Drawing& drawing, const QString& title, const Wording& wording,
                  const char* look = "") {
  QString svg = QString::fromStdString(writeSvg(drawing, title.toStdString(), wording));
  svg.remove(0, svg.indexOf(QLatin1String("<svg")));
  static const QRegularExpression ids(QStringLiteral(" id=\"[^\"]*\""));
  static const QRegularExpression size(
      QStringLiteral("^<svg([^>]*) width=\"[^\"]*\" height=\"[^\"]*\""));
  svg.remove(ids);
  svg.replace(size, QStringLiteral("<svg\\1 role=\"img\""));
  return QStringLiteral("<figure%1>").arg(QLatin1String(look)) + svg +
         QStringLiteral("</figure>\n");
}

Drawing inForm(Drawing drawing, const GuideForm& form) {
  return form.black ? inBlack(std::move(drawing)) : drawing;
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
             const Wording& wording, const GuideForm& form) {
  QString out = QStringLiteral("<h1>%1</h1>\n<div class=\"facts\">").arg(escaped(words.title));
  for (const QString& fact : words.facts())
    out += QStringLiteral("<p>") + escaped(fact) + QStringLiteral("</p>");
  out += QStringLiteral("</div>\n");
  if (!words.notes.isEmpty()) out += QStringLiteral("<p>%1</p>\n").arg(escaped(words.notes));
  return out +
         inlineSvg(inForm(finishedFigure(built, {120, 80}), form),
                   GuideTr::tr("The finished piece"), wording, " class=\"finished\"") +
         photoFigure(photos.finished);
}

/// What the hand-out needs: sheets as a table, what sticks as a list.
QString needed(const GuideWords& words) {
  QString out;
  if (!words.parts.empty()) {
    out += heading(partsHeading()) + QStringLiteral("<table class=\"parts\">\n");
    for (const PartWords& part : words.parts) {
      out += QStringLiteral("<tr>");
      for (const QString& cell : {part.letter, part.name, part.count})
        out += QStringLiteral("<td>") + escaped(cell) + QStringLiteral("</td>");
      out += QStringLiteral("<td class=\"size\">") + escaped(part.size) +
             QStringLiteral("</td><td>") + escaped(part.card) + QStringLiteral("</td></tr>\n");
    }
    out += QStringLiteral("</table>\n");
  }
  if (!words.sticking.isEmpty()) out += heading(suppliesHeading()) + list(words.sticking);
  out += heading(toolsHeading()) + QStringLiteral("<p>") +
         escaped(words.tools.join(QStringLiteral(" · "))) + QStringLiteral("</p>\n");
  return out + heading(cautionsHeading()) + list(words.cautions, " class=\"care\"");
}

QString stepText(int number, const StepWords& words, const std::optional<GuidePhoto>& photo) {
  QString out = QStringLiteral("<h3><span class=\"no\">%1</span>%2</h3>\n")
                    .arg(QString::number(number), escaped(words.title));
  for (const QString& paragraph : words.paragraphs())
    out += QStringLiteral("<p>") + escaped(paragraph) + QStringLiteral("</p>\n");
  if (!words.details.isEmpty())
    out += QStringLiteral("<p class=\"detail\">") + escaped(words.details.join(QLatin1Char(' '))) +
           QStringLiteral("</p>\n");
  if (!words.checks.isEmpty()) out += list(words.checks, " class=\"checks\"");
  return out + photoFigure(photo);
}

/// The steps as on paper: those that share a map beside it, the others in a grid of cells.
class StepsHtml {
 public:
  StepsHtml(const BuiltDesign& built, const Guide& guide, const GuideWords& words,
            const GuidePhotos& photos, const Wording& wording, const GuideForm& form)
      : built_(built),
        guide_(guide),
        words_(words),
        photos_(photos),
        wording_(wording),
        form_(form) {}

  QString write() const {
    QString out;
    bool inGrid = false;
    for (const GuidePart& part : guideParts(guide_)) {
      const bool cell = part.map == MapKind::None;
      if (inGrid && !cell) out += QStringLiteral("</div>\n");
      if (cell && !inGrid) out += QStringLiteral("<div class=\"grid\">\n");
      inGrid = cell;
      out += cell ? cellOf(part.first) : mapOf(part);
    }
    return inGrid ? out + QStringLiteral("</div>\n") : out;
  }

 private:
  [[nodiscard]] QString text(std::size_t step) const {
    return stepText(static_cast<int>(step) + 1, words_.steps[step], photos_.steps[step]);
  }

  [[nodiscard]] QString pictureTitle(std::size_t step) const {
    return GuideTr::tr("Figure of step %1: %2").arg(step + 1).arg(words_.steps[step].title);
  }

  [[nodiscard]] QString cellOf(std::size_t step) const {
    return QStringLiteral("<article>\n") +
           inlineSvg(inForm(guideFigure(built_, guide_.steps[step], kCell), form_),
                     pictureTitle(step), wording_) +
           text(step) + QStringLiteral("</article>\n");
  }

  [[nodiscard]] QString mapOf(const GuidePart& part) const {
    QString out = QStringLiteral("<section class=\"map\">\n") +
                  inlineSvg(inForm(partMap(built_, guide_, part, kMap, wording_), form_),
                            pictureTitle(part.first), wording_) +
                  QStringLiteral("<div>\n");
    for (std::size_t i = part.first; i < part.first + part.count; ++i)
      out += QStringLiteral("<article>\n") + text(i) + QStringLiteral("</article>\n");
    return out + QStringLiteral("</div>\n</section>\n");
  }

  const BuiltDesign& built_;
  const Guide& guide_;
  const GuideWords& words_;
  const GuidePhotos& photos_;
  const Wording& wording_;
  const GuideForm& form_;
};

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
  out += head(words, built, photos, wording, form);
  out += needed(words);
  out += heading(stepsHeading()) + QStringLiteral("<div class=\"steps\">\n") +
         StepsHtml(built, guide, words, photos, wording, form).write() + QStringLiteral("</div>\n");
  if (!note.lines.isEmpty()) out += heading(note.heading) + list(note.lines);
  out += QStringLiteral("</main>\n</body>\n</html>\n");
  return out.toUtf8();
}

}  // namespace creasewright
