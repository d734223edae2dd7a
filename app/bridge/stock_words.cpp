#include "bridge/stock_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/text.h"

namespace creasewright {

namespace {

// Names in resources/card_stock.json and resources/stock, where no translation tool looks.
[[maybe_unused]] constexpr const char* names[] = {
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

}  // namespace

QString cardName(const Card& card) {
  const QString name = stockName(card.name);
  const auto& [face, back] = card.colours;
  if (face && back && *back != *face) {
    return QCoreApplication::translate("colours", "%1, %2, back %3")
        .arg(name, colourName(*face), colourName(*back));
  }
  if (face) return QCoreApplication::translate("colours", "%1, %2").arg(name, colourName(*face));
  if (back)
    return QCoreApplication::translate("colours", "%1, back %2").arg(name, colourName(*back));
  return name;
}

QString colourName(Colour colour) {
  const auto named = std::ranges::find(namedColours(), colour, &NamedColour::colour);
  return named == namedColours().end()
             ? text(hexText(colour))
             : QCoreApplication::translate(named->title.context(), named->title.source());
}

QString stockName(const std::string& name) {
  return name.empty() ? QString() : QCoreApplication::translate("stock", name.c_str());
}

}  // namespace creasewright
