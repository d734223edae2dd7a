#include "bridge/label_text.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <map>
#include <string_view>

#include "bridge/text.h"
#include "units/tool_grid.h"

namespace creasewright {

namespace {

/// Source text of each code; %1, %2 … stand for the label's values in order, %L for the lengths
/// from the first one on as a list.
const char* sourceText(std::string_view code) {
  static const std::map<std::string_view, const char*> texts{
      {"length", QT_TRANSLATE_NOOP("labels", "%1")},
      {"page-of", QT_TRANSLATE_NOOP("labels", "page %1 of %2")},
      {"tile", QT_TRANSLATE_NOOP("labels", "tile %1")},
      {"blank-size", QT_TRANSLATE_NOOP("labels", "blank %1 × %2")},
      {"make-count", QT_TRANSLATE_NOOP("labels", "Make %1 of these.")},
      {"make-short", QT_TRANSLATE_NOOP("labels", "make %1")},
      {"unit-mm", QT_TRANSLATE_NOOP("labels", "One drawing unit is 1 mm.")},
      {"drawn-face", QT_TRANSLATE_NOOP("labels", "The printed face becomes the inside.")},
      {"words-outside", QT_TRANSLATE_NOOP("labels", "Words are for the other face, the outside.")},
      {"drawn-face-behind", QT_TRANSLATE_NOOP("labels", "The printed face becomes the outside.")},
      {"inside-up", QT_TRANSLATE_NOOP("labels", "inside up")},
      {"outside-up", QT_TRANSLATE_NOOP("labels", "outside up")},
      {"print-scale", QT_TRANSLATE_NOOP("labels", "Print at 100 %, not “fit to page”.")},
      {"check-bar-hint",
       QT_TRANSLATE_NOOP("labels",
                         "Measure the bars before you cut. 97.3 mm instead of 100: a letter page "
                         "was shrunk onto A4; 94.1 mm: an A4 page onto letter. Choose your paper "
                         "and 100 %, and print again.")},
      {"readings-mm", QT_TRANSLATE_NOOP("labels", "Numbers at the edges: score settings in mm.")},
      {"readings-in",
       QT_TRANSLATE_NOOP("labels", "Numbers at the edges: score settings in inches.")},
      {"corrected", QT_TRANSLATE_NOOP("labels", "corrected for the printer: across %1, down %2")},
      {"calibration-title", QT_TRANSLATE_NOOP("labels", "Calibration page, %1")},
      {"calibration-across", QT_TRANSLATE_NOOP("labels", "%1 across")},
      {"calibration-down", QT_TRANSLATE_NOOP("labels", "%1 down")},
      {"calibration-print",
       QT_TRANSLATE_NOOP(
           "labels",
           "1. Print this page at 100 %, not “fit to page”, on the paper and with the "
           "printer you use for templates.")},
      {"calibration-measure",
       QT_TRANSLATE_NOOP("labels",
                         "2. Measure both bars from end to end with a steel ruler, as exactly as "
                         "you can read it.")},
      {"calibration-type",
       QT_TRANSLATE_NOOP(
           "labels",
           "3. Type both numbers where you chose this page. Templates printed on that "
           "paper with that printer then come out in true size; each says so.")},
      {"strips-title", QT_TRANSLATE_NOOP("labels", "score guide strips")},
      {"strip-all-sides", QT_TRANSLATE_NOOP("labels", "one strip for all four sides")},
      {"strip-part", QT_TRANSLATE_NOOP("labels", "part %1 of %2")},
      {"strip-edge", QT_TRANSLATE_NOOP("labels", "lay this strip’s lower edge along the sheet")},
      {"strip-to-line", QT_TRANSLATE_NOOP("labels", "stop at line %1")},
      {"strip-to", QT_TRANSLATE_NOOP("labels", "stop at %1")},
      {"strip-hint",
       QT_TRANSLATE_NOOP("labels",
                         "Cut the strips out. Turn the sheet, inside up, so that the side named "
                         "lies to you, and lay the strip along it from corner to corner: score "
                         "from every tick. A tick with a bar is a short score. The small arrow "
                         "shows the end its number counts from. Butt the parts of a long strip at "
                         "the double lines.")},
      {"strip-free",
       QT_TRANSLATE_NOOP("labels", "Slanting scores and curves are on the template only.")},
      {"tracing-hint",
       QT_TRANSLATE_NOOP("labels",
                         "Trace the outline, prick through the points, and score from point to "
                         "point.")},
      {"printed-hint",
       QT_TRANSLATE_NOOP("labels",
                         "Colour runs %1 beyond every cut. Trim from the corner marks; short ticks "
                         "show where folds end. Flaps that take glue stay plain.")},
      {"printed-hint-bare",
       QT_TRANSLATE_NOOP("labels",
                         "Colour ends at the cuts. Trim from the corner marks; short ticks show "
                         "where folds end. Flaps that take glue stay plain.")},
      {"printed-back",
       QT_TRANSLATE_NOOP("labels",
                         "A back page: turn the printed sheet over sideways, as one turns a page "
                         "of a book, and cut from the front.")},
      {"joins", QT_TRANSLATE_NOOP("labels", "joins %1")},
      {"trim",
       QT_TRANSLATE_NOOP("labels", "Cut along the thin frame, butt the tiles; the circles close.")},
      {"legend-heading", QT_TRANSLATE_NOOP("labels", "Lines")},
      {"legend-cut", QT_TRANSLATE_NOOP("labels", "cut")},
      {"legend-valley", QT_TRANSLATE_NOOP("labels", "score, fold towards you")},
      {"legend-mountain", QT_TRANSLATE_NOOP("labels", "score, fold away from you")},
      {"legend-perforation", QT_TRANSLATE_NOOP("labels", "perforate")},
      {"legend-cut-mark", QT_TRANSLATE_NOOP("labels", "mark only, guides a cut")},
      {"legend-prick", QT_TRANSLATE_NOOP("labels", "prick through: end of a score")},
      {"legend-glue-behind", QT_TRANSLATE_NOOP("labels", "glue on the other face")},
      {"legend-glue", QT_TRANSLATE_NOOP("labels", "glue here")},
      {"glue-inside", QT_TRANSLATE_NOOP("labels", "adhesive, inside up")},
      {"glue-outside", QT_TRANSLATE_NOOP("labels", "adhesive, outside up")},
      {"glue-behind", QT_TRANSLATE_NOOP("labels", "already on the other face")},
      {"legend-waste", QT_TRANSLATE_NOOP("labels", "cut away")},
      {"score-heading", QT_TRANSLATE_NOOP("labels", "Score settings")},
      {"score-all-sides", QT_TRANSLATE_NOOP("labels", "All four sides:")},
      {"score-short-sides", QT_TRANSLATE_NOOP("labels", "Both short sides:")},
      {"score-long-sides", QT_TRANSLATE_NOOP("labels", "Both long sides:")},
      {"score-left-right", QT_TRANSLATE_NOOP("labels", "Left and right side:")},
      {"score-bottom-top", QT_TRANSLATE_NOOP("labels", "Bottom and top side:")},
      {"score-left-bottom", QT_TRANSLATE_NOOP("labels", "Left and bottom side:")},
      {"score-left-top", QT_TRANSLATE_NOOP("labels", "Left and top side:")},
      {"score-right-bottom", QT_TRANSLATE_NOOP("labels", "Right and bottom side:")},
      {"score-right-top", QT_TRANSLATE_NOOP("labels", "Right and top side:")},
      {"score-left-right-bottom", QT_TRANSLATE_NOOP("labels", "Left, right and bottom side:")},
      {"score-left-right-top", QT_TRANSLATE_NOOP("labels", "Left, right and top side:")},
      {"score-left-bottom-top", QT_TRANSLATE_NOOP("labels", "Left, bottom and top side:")},
      {"score-right-bottom-top", QT_TRANSLATE_NOOP("labels", "Right, bottom and top side:")},
      {"score-left", QT_TRANSLATE_NOOP("labels", "Left side:")},
      {"score-right", QT_TRANSLATE_NOOP("labels", "Right side:")},
      {"score-bottom", QT_TRANSLATE_NOOP("labels", "Bottom side:")},
      {"score-top", QT_TRANSLATE_NOOP("labels", "Top side:")},
      {"score-full", QT_TRANSLATE_NOOP("labels", "Score all the way across at %L.")},
      {"mark-full",
       QT_TRANSLATE_NOOP("labels", "Mark all the way across at %L, only to guide a cut.")},
      {"score-short-line",
       QT_TRANSLATE_NOOP("labels",
                         "Score at %L from the %1 corner, from the edge down to line %2.")},
      {"mark-short-line",
       QT_TRANSLATE_NOOP(
           "labels",
           "Mark at %L from the %1 corner, from the edge down to line %2, only to guide a cut.")},
      {"score-short-depth",
       QT_TRANSLATE_NOOP("labels", "Score at %L from the %1 corner, down to a depth of %2.")},
      {"mark-short-depth",
       QT_TRANSLATE_NOOP(
           "labels", "Mark at %L from the %1 corner, down to a depth of %2, only to guide a cut.")},
      {"score-free",
       QT_TRANSLATE_NOOP("labels",
                         "Score from (%1, %2) to (%3, %4), counted from the lower left corner.")},
      {"score-free-right",
       QT_TRANSLATE_NOOP("labels",
                         "Score from (%1, %2) to (%3, %4), counted from the lower right corner.")},
      {"score-curves",
       QT_TRANSLATE_NOOP("labels", "Trace the %1 curves from the template with a stylus.")},
      {"score-empty", QT_TRANSLATE_NOOP("labels", "This piece needs no score.")},
      {"corner-left", QT_TRANSLATE_NOOP("labels", "left")},
      {"corner-right", QT_TRANSLATE_NOOP("labels", "right")},
      {"corner-bottom", QT_TRANSLATE_NOOP("labels", "bottom")},
      {"corner-top", QT_TRANSLATE_NOOP("labels", "top")},
      {"pattern-up", QT_TRANSLATE_NOOP("labels", "up")},
      {"fence", QT_TRANSLATE_NOOP("labels", "fence")},
      {"measures-heading", QT_TRANSLATE_NOOP("labels", "Measures")},
      {"card", QT_TRANSLATE_NOOP("labels", "%1, %2 thick")},
      {"card-weight", QT_TRANSLATE_NOOP("labels", "%1, %2 g/m² (%3 lb cover), %4 thick")},
      {"card-pounds", QT_TRANSLATE_NOOP("labels", "%1 (%2 lb cover), %3 thick")},
      {"card-grams", QT_TRANSLATE_NOOP("labels", "%1 (%2 g/m²), %3 thick")},
      {"yes", QT_TRANSLATE_NOOP("labels", "yes")},
      {"no", QT_TRANSLATE_NOOP("labels", "no")},
      {"parameter", QT_TRANSLATE_NOOP("labels", "%1: %2")},
  };
  const auto found = texts.find(code);
  return found == texts.end() ? nullptr : found->second;
}

QString valueText(const ProblemValue& value, Unit unit) {
  struct Text {
    Unit unit;
    QString operator()(Length length) const { return lengthText(length, unit); }
    QString operator()(Angle angle) const {
      return QLocale().toString(angle.degrees(), 'g', 6) + QChar(0x00B0);
    }
    QString operator()(std::int64_t number) const { return QString::number(number); }
    QString operator()(double number) const { return QLocale().toString(number, 'g', 6); }
    QString operator()(const std::string& words) const {
      const char* source = sourceText(words);
      return source == nullptr ? text(words) : QCoreApplication::translate("labels", source);
    }
  };
  return std::visit(Text{unit}, value);
}

/// The number of a step at the trimmer and its setting; what no mark of a ruler in inches is set in
/// millimetres.
QString trimSetting(const Label& label, Unit unit) {
  const Length setting = std::get<Length>(label.values.at(1));
  const bool marked = unit == Unit::Millimetre || ToolGrid::sixteenthInch().holds(setting);
  return QStringLiteral("%1: %2")
      .arg(std::get<std::int64_t>(label.values.at(0)))
      .arg(marked ? lengthText(setting, unit, false) : lengthText(setting, Unit::Millimetre));
}

}  // namespace

QString labelText(const Label& label, Unit unit) {
  if (label.code.empty()) return text(label.literal);
  if (label.code == "reading")  // a length on a map, whose sheet says the unit
    return lengthText(std::get<Length>(label.values.at(0)), unit, false);
  if (label.code == "trim-setting") return trimSetting(label, unit);
  const char* source = sourceText(label.code);
  if (source == nullptr) return text(label.code);
  const QString pattern = QCoreApplication::translate("labels", source);
  qsizetype places = 0;  // values with a place of their own; the rest is the list %L
  for (qsizetype i = 0; i + 1 < pattern.size(); ++i)
    if (pattern[i] == u'%' && pattern[i + 1].isDigit())
      places = std::max<qsizetype>(places, pattern[i + 1].digitValue());
  QStringList values;
  for (const ProblemValue& value : label.values) values.append(valueText(value, unit));
  // One pass, so that a value with a percent sign in it is left alone.
  QString out;
  for (qsizetype i = 0; i < pattern.size(); ++i) {
    const QChar next = pattern[i] == u'%' && i + 1 < pattern.size() ? pattern[i + 1] : QChar();
    if (next == u'L') {
      out += values.mid(places).join(QStringLiteral(", "));
      ++i;
    } else if (next.isDigit() && next.digitValue() >= 1 && next.digitValue() <= values.size()) {
      out += values[next.digitValue() - 1];
      ++i;
    } else {
      out += pattern[i];
    }
  }
  return out;
}

Wording wordingIn(Unit unit) {
  return [unit](const Label& label) { return labelText(label, unit).toStdString(); };
}

}  // namespace creasewright
