#include "bridge/stock_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstdlib>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "patterns/pattern.h"

namespace creasewright {

namespace {

// Names in resources/card_stock.json and resources/stock, where no translation tool looks.
[[maybe_unused]] constexpr const char* names[] = {
    QT_TRANSLATE_NOOP("stock", "Clear film"),
    QT_TRANSLATE_NOOP("stock", "65 lb cover"),
    QT_TRANSLATE_NOOP("stock", "80 lb cover"),
    QT_TRANSLATE_NOOP("stock", "100 lb cover"),
    QT_TRANSLATE_NOOP("stock", "110 lb cover"),
    QT_TRANSLATE_NOOP("stock", "90 lb index"),
    QT_TRANSLATE_NOOP("stock", "110 lb index"),
    QT_TRANSLATE_NOOP("stock", "140 lb index"),
    QT_TRANSLATE_NOOP("stock", "170 lb index"),
    QT_TRANSLATE_NOOP("stock", "150 lb folder stock"),
    QT_TRANSLATE_NOOP("stock", "10 pt coated cover"),
    QT_TRANSLATE_NOOP("stock", "12 pt coated cover"),
    QT_TRANSLATE_NOOP("stock", "220 g/m² card"),
    QT_TRANSLATE_NOOP("stock", "300 g/m² card"),
    QT_TRANSLATE_NOOP("stock", "1.5 mm grey board"),
    QT_TRANSLATE_NOOP("stock", "Letter"),
    QT_TRANSLATE_NOOP("stock", "Patterned paper, 12 x 12 in"),
    QT_TRANSLATE_NOOP("stock", "Patterned paper, A4"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 1/8 in"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 1/4 in"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 3/8 in"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 1/2 in"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 3 mm"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 6 mm"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 9 mm"),
    QT_TRANSLATE_NOOP("stock", "Double-sided tape 12 mm"),
    QT_TRANSLATE_NOOP("stock", "Ribbon 15 mm"),
    QT_TRANSLATE_NOOP("stock", "Ribbon 10 mm"),
    QT_TRANSLATE_NOOP("stock", "Adhesive dots"),
};

/// What a side of a card is printed or coloured with; empty where it is plain.
QString sideName(const CardColours& colours, bool behind) {
  if (const PaperPattern* paper = colours.patternOf(behind)) return paperName(*paper);
  const std::optional<Colour>& colour = behind ? colours.back : colours.face;
  return colour ? colourName(*colour) : QString();
}

/// The colours that a paper is printed in, the ground first.
std::vector<Colour> printedIn(const PaperPattern& paper, const PatternKind& pattern) {
  const std::vector<Colour> all = coloursOf(paper);
  std::vector<Colour> used;
  for (int ink = 0; ink < static_cast<int>(all.size()); ++ink)
    if (ink == 0 || std::ranges::any_of(pattern.layers, [ink](const PatternLayer& layer) {
          return layer.ink == ink || layer.mixed == ink;
        }))
      used.push_back(all[static_cast<std::size_t>(ink)]);
  return used;
}

/// Its plain name, or that of one of ours that is nearly alike.
QString nearName(Colour colour) {
  constexpr int kAlike = 60;  // in red, green and blue together
  const auto apart = [colour](const NamedColour& other) {
    return std::abs(other.colour.red - colour.red) + std::abs(other.colour.green - colour.green) +
           std::abs(other.colour.blue - colour.blue);
  };
  const auto nearest = std::ranges::min_element(namedColours(), {}, apart);
  return apart(*nearest) <= kAlike ? colourName(nearest->colour) : colourName(colour);
}

}  // namespace

QString cardName(const Card& card) {
  const QString name = stockName(card.name);
  const QString face = sideName(card.colours, false);
  const QString back = sideName(card.colours, true);
  if (!face.isEmpty() && !back.isEmpty() && face != back)
    return QCoreApplication::translate("colours", "%1, %2, back %3").arg(name, face, back);
  if (!face.isEmpty()) return QCoreApplication::translate("colours", "%1, %2").arg(name, face);
  if (!back.isEmpty()) return QCoreApplication::translate("colours", "%1, back %2").arg(name, back);
  return name;
}

QString colourName(Colour colour) {
  const auto named = std::ranges::find(namedColours(), colour, &NamedColour::colour);
  return named == namedColours().end()
             ? text(hexText(colour))
             : QCoreApplication::translate(named->title.context(), named->title.source());
}

QString paperName(const PaperPattern& paper) {
  if (paper.picture)
    return QCoreApplication::translate("patterns", "own picture %1 wide")
        .arg(lengthText(paper.scale, Unit::Millimetre));
  const PatternKind* pattern = patternCalled(paper.id);
  if (pattern == nullptr) return text(paper.id);
  const QString name =
      QCoreApplication::translate("patterns", "%1 %2")
          .arg(QCoreApplication::translate(pattern->title.context(), pattern->title.source()),
               lengthText(paper.scale, Unit::Millimetre));
  QStringList colours;
  for (const Colour& colour : printedIn(paper, *pattern)) {
    const QString words = nearName(colour);
    if (!colours.contains(words)) colours += words;
  }
  return colours.isEmpty() ? name
                           : QCoreApplication::translate("patterns", "%1 in %2")
                                 .arg(name, colours.join(QStringLiteral(", ")));
}

QString punchName(const Punch& punch) {
  const bool inches =
      ToolGrid::sixteenthInch().holds(punch.width) && ToolGrid::sixteenthInch().holds(punch.height);
  const Unit unit = inches ? Unit::Inch : Unit::Millimetre;
  const Worded shape = shapeWords().at(static_cast<std::size_t>(punch.shape));
  QString called = styleText(shape);
  // English writes it small, other languages as they have it.
  if (called == text(shape.source())) called = called.toLower();
  const QString size = isRound(punch.shape)
                           ? lengthText(punch.width, unit)
                           : QStringLiteral("%1 × %2").arg(lengthText(punch.width, unit, false),
                                                           lengthText(punch.height, unit));
  return QCoreApplication::translate("stock", "%1 %2", "size and shape of a punch")
      .arg(size, called);
}

QString stockName(const std::string& name) {
  return name.empty() ? QString() : QCoreApplication::translate("stock", name.c_str());
}

}  // namespace creasewright
