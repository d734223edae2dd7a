#include "cli/cards_command.h"

#include <memory>

#include <nlohmann/json.hpp>

#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "fit/card.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

void printCardsJson() {
  Json list = Json::array();
  for (const Card& card : cards()) {
    const Json weight = card.grammage > 0 ? Json(card.grammage) : Json(nullptr);
    list.push_back({{"id", card.id},
                    {"name", card.name},
                    {"caliper_mm", card.caliper.mm()},
                    {"grammage", weight}});
  }
  Json colours = Json::array();
  for (const NamedColour& colour : namedColours())
    colours.push_back({{"id", colour.id}, {"srgb", hexText(colour.colour)}});
  const Json page{{"format", "creasewright-cards"},
                  {"version", 1},
                  {"cards", std::move(list)},
                  {"colours", std::move(colours)}};
  printLine(QString::fromStdString(page.dump(2)));
}

QString cardLine(const Card& card) {
  const QString thick = Cli::tr("%1 mm").arg(card.caliper.mm());
  const QString weight =
      card.grammage > 0 ? Cli::tr("%1 g/m²").arg(card.grammage) : Cli::tr("weight not known");
  return QStringLiteral("%1%2%3%4")
      .arg(text(card.id).leftJustified(18), thick.leftJustified(10), weight.leftJustified(20),
           cardName(card));
}

int runCards(bool json) {
  if (json) {
    printCardsJson();
    return ExitHolds;
  }
  for (const Card& card : cards()) printLine(cardLine(card));
  printLine(Cli::tr("Any other card by its measure: 0.3mm, 12pt, 300gsm or 300gsm@1.3 (bulk)."));
  QStringList colours;
  for (const NamedColour& colour : namedColours()) colours += text(colour.id);
  printLine(Cli::tr("Colours for --colour: %1; any other as #9AAF90.")
                .arg(colours.join(QStringLiteral(", "))));
  return ExitHolds;
}

QString cardsHelp() {
  return Cli::tr("list the cards that can be named, with thickness and weight");
}

std::function<int()> prepareCards(Grammar& grammar) {
  const auto json = std::make_shared<bool>();
  grammar.flag("--json", *json, Cli::tr("for other programs"));
  return [json] { return runCards(*json); };
}

}  // namespace

Command cardsCommand() { return {"cards", cardsHelp, prepareCards}; }

}  // namespace creasewright
