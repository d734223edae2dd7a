#include "fit/card.h"

#include <cmath>
#include <fstream>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "units/length_text.h"

namespace creasewright {
namespace {

double cover(double pounds) { return grammage(pounds, Length::inches(20), Length::inches(26)); }

// Source: computed from exact constants, 453.59237 / (500 w h 0.0254^2) g/m2 per pound.
TEST(Grammage, PerPoundOfEveryBasis) {
  const auto perPound = [](Length width, Length height) { return grammage(1, width, height); };
  EXPECT_NEAR(cover(1), 2.70411, 5e-6);
  EXPECT_NEAR(perPound(Length::inches(51, 2), Length::inches(61, 2)), 1.80796, 5e-6);  // index
  EXPECT_NEAR(perPound(Length::inches(45, 2), Length::inches(57, 2)), 2.19281, 5e-6);  // bristol
  EXPECT_NEAR(perPound(Length::inches(25), Length::inches(38)), 1.48015, 5e-6);        // text
  EXPECT_NEAR(perPound(Length::inches(17), Length::inches(22)), 3.75973, 5e-6);        // bond
  EXPECT_NEAR(perPound(Length::inches(24), Length::inches(36)), 1.62748, 5e-6);        // tag
}

// Source: computed from exact constants, as above.
TEST(Grammage, OfTheUsualStocks) {
  EXPECT_NEAR(cover(65), 175.77, 0.005);
  EXPECT_NEAR(cover(80), 216.33, 0.005);
  EXPECT_NEAR(cover(100), 270.41, 0.005);
  EXPECT_NEAR(cover(110), 297.45, 0.005);
  EXPECT_NEAR(grammage(110, Length::inches(51, 2), Length::inches(61, 2)), 198.88, 0.005);
  EXPECT_NEAR(grammage(67, Length::inches(45, 2), Length::inches(57, 2)), 146.92, 0.005);
  EXPECT_NEAR(grammage(20, Length::inches(17), Length::inches(22)), 75.19, 0.005);
}

// Source: HP LaserJet 5550 manual, p. 27, Table 1-23, weight equivalence (read). It prints whole
// numbers and strays from the exact value by up to 1.1 g/m2 (67 lb bristol 148).
TEST(Grammage, AsAPrinterManualPrintsIt) {
  EXPECT_NEAR(cover(65), 176, 1.1);
  EXPECT_NEAR(cover(80), 216, 1.1);
  EXPECT_NEAR(cover(100), 271, 1.1);
  EXPECT_NEAR(grammage(110, Length::inches(51, 2), Length::inches(61, 2)), 199, 1.1);
  EXPECT_NEAR(grammage(67, Length::inches(45, 2), Length::inches(57, 2)), 148, 1.1);
  EXPECT_NEAR(grammage(20, Length::inches(17), Length::inches(22)), 75, 1.1);
}

// Source: US Government Paper Specification Standards, JCP K10 (read): 110 lb index, 200 g/m2, is
// 0.230 mm thick; the bulk of 1.15 follows from the two.
TEST(Caliper, IsGrammageTimesBulk) {
  EXPECT_EQ(caliper(200, 1.15), Length::mm(0.230));
  EXPECT_EQ(caliper(300, 1.35), Length::mm(0.405));
}

TEST(Card, TheFirstIsTheCoverAClassUses) {
  ASSERT_GE(cards().size(), 12u);
  EXPECT_EQ(cards()[0], (Card{"cover-65lb", "65 lb cover", Length::mm(0.24), 176}));
}

/// Where a stock is named by its US weight, the listed grammage is within the tolerance of JCP
/// (read): +-5 % cover, +-10 % index.
TEST(Card, ListedWeightsAgreeWithTheirNames) {
  for (const int pounds : {65, 80, 100, 110})
    EXPECT_NEAR(findCard("cover-" + std::to_string(pounds) + "lb")->grammage, cover(pounds),
                0.05 * cover(pounds));
  for (const int pounds : {90, 110, 140, 170}) {
    const double exact = grammage(pounds, Length::inches(51, 2), Length::inches(61, 2));
    EXPECT_NEAR(findCard("index-" + std::to_string(pounds) + "lb")->grammage, exact, 0.1 * exact);
  }
}

TEST(Card, FindsEveryListedOne) {
  std::set<std::string> ids;
  for (const Card& card : cards()) {
    EXPECT_TRUE(ids.insert(card.id).second) << card.id;
    EXPECT_EQ(*findCard(card.id), card);
  }
}

TEST(Card, FindsByMeasure) {
  EXPECT_EQ(*findCard("0.3mm"), (Card{"0.3mm", "0.3 mm", Length::mm(0.3), 0}));
  EXPECT_EQ(findCard("0,3 mm")->caliper, Length::mm(0.3));
  EXPECT_EQ(findCard("0.012in")->caliper, Length::mm(0.3048));
  EXPECT_EQ(*findCard("12pt"), (Card{"12pt", "12 pt", Length::mm(0.3048), 0}));
  EXPECT_EQ(findCard("12.5 pt")->caliper, Length::mm(0.3175));
  EXPECT_EQ(*findCard("300gsm"), (Card{"300gsm", "300 g/m\u00B2", Length::mm(0.405), 300}));
  EXPECT_EQ(findCard("300gsm@1.3")->caliper, Length::mm(0.39));
  EXPECT_EQ(findCard("300 gsm @ 1,3")->caliper, Length::mm(0.39));
  EXPECT_EQ(findCard("3mm")->caliper, Length::mm(3));
}

TEST(Card, AMeasuredCardIsFoundAgainByItsId) {
  for (const char* text : {"0.3mm", "12pt", "300gsm", "300gsm@1.3", "0.3 mm"}) {
    const Card card = *findCard(text);
    EXPECT_EQ(*findCard(card.id), card);
  }
}

TEST(Card, RefusesWhatIsNoCard) {
  for (const char* text :
       {"",          "0.3",           "300",     "cover",   "Cover-65lb", "cover-65lb ",
        "0mm",       "-0.3mm",        "0.009mm", "0pt",     "-1pt",       "pt",
        "gsm",       "0gsm",          "-300gsm", "300gsm@", "300gsm@0",   "300gsm@x",
        "300gsm1.3", "nangsm",        "infgsm",  "nanpt",   "1e3gsm",     "300gsm@1.3@2",
        "1/0in",     "99999999999gsm"}) {
    const Result<Card> card = findCard(text);
    ASSERT_FALSE(card.ok()) << text;
    EXPECT_EQ(card.problem().code, ProblemCode::CardUnknown) << text;
    ASSERT_FALSE(card.problem().values.empty()) << text;  // then the cards it is like
    EXPECT_EQ(std::get<std::string>(card.problem().values.front()), text);
  }
}

TEST(Card, RefusesWhatIsTooThickToFold) {
  for (const char* text :
       {"3.000001mm", "119pt", "3000gsm@1.35", "9999gsm", "1in", "1 1/1000 in", "50mm"}) {
    const Result<Card> card = findCard(text);
    ASSERT_FALSE(card.ok()) << text;
    EXPECT_EQ(card.problem().code, ProblemCode::CardTooThick) << text;
    EXPECT_EQ(std::get<Length>(card.problem().values.at(1)), Length::mm(3));
  }
}

/// resources/card_stock.json lists the same stocks in the same order, each with its source.
TEST(Card, TableMatchesTheResource) {
  std::ifstream file(CREASEWRIGHT_SOURCE_DIR "/resources/card_stock.json");
  const auto json = nlohmann::json::parse(file, nullptr, false);
  ASSERT_TRUE(json.is_object());
  const auto& rows = json["cards"];
  ASSERT_EQ(rows.size(), cards().size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Card& card = cards()[i];
    EXPECT_EQ(rows[i]["id"], card.id);
    EXPECT_EQ(rows[i]["name"], card.name);
    EXPECT_EQ(rows[i]["grammage"], card.grammage);
    EXPECT_EQ(*parseLength(std::string(rows[i]["caliper"]), Unit::Inch), card.caliper);
    EXPECT_FALSE(std::string(rows[i]["source"]).empty());
  }
}

}  // namespace
}  // namespace creasewright
