#include <algorithm>
#include <map>
#include <set>

#include <gtest/gtest.h>

#include "core/kits/plan_of.h"
#include "cutting/check_plan.h"
#include "fit/card_pattern.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// Plain blanks of one size, each of a card of its own.
ClassKit cardsOfOneSize(int cardCount, int takers, const std::vector<StockSheet>& stock) {
  ClassKit kit;
  kit.takers = takers;
  kit.stock = stock;
  for (int c = 0; c < cardCount; ++c)
    kit.blanks.push_back({"Blank " + std::to_string(c), Length::mm(200), Length::mm(280),
                          cards()[static_cast<std::size_t>(c)], 1});
  return kit;
}

std::map<int, int> usedOf(const KitPlan& plan) {
  std::map<int, int> used;
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.plan.layouts) used[layout.stock] += layout.count;
  return used;
}

// Two large sheets hold five blanks each; both cards wanted both of them, and four were cut.
TEST(SharedStock, SheetsOfAnyCardAreNotCutTwice) {
  const std::vector<StockSheet> stock{
      {.name = "Big", .width = Length::mm(500), .height = Length::mm(700), .atHand = 2},
      {.name = "Small", .width = Length::mm(210), .height = Length::mm(297)}};
  const KitPlan plan = testing::planOf(cardsOfOneSize(2, 20, stock)).value();
  EXPECT_LE(usedOf(plan)[0], 2);
  // 40 blanks, 2 x 5 on the large sheets, the others on one small sheet each.
  EXPECT_EQ(plan.sheets, 2 + 30);
  EXPECT_FALSE(plan.proven && plan.cards[0].plan.bound + plan.cards[1].plan.bound < plan.sheets);
}

/// Fewest sheets for so many cards of `takers` blanks, trying every number of large sheets, of five
/// blanks each, that a card gets.
int fewestByEverySplit(int cardCount, int takers, int atHand) {
  if (cardCount == 0) return 0;
  int least = 100'000;
  for (int own = 0; own <= atHand; ++own)
    least = std::min(least, own + std::max(0, takers - 5 * own) +
                                fewestByEverySplit(cardCount - 1, takers, atHand - own));
  return least;
}

// A large sheet holds five blanks, two of them lying.
TEST(SharedStock, RandomCardsAreSharedAsWellAsEverySplitCan) {
  testing::Random random(917);
  int shared = 0;
  for (int round = 0; round < 40; ++round) {
    const int cardCount = random.whole(2, 3);
    const int atHand = random.whole(1, 6);
    const int takers = random.whole(2, 24);
    const std::vector<StockSheet> stock{
        {.name = "Big", .width = Length::mm(500), .height = Length::mm(700), .atHand = atHand},
        {.name = "Small", .width = Length::mm(210), .height = Length::mm(297)}};
    const auto plan = testing::planOf(cardsOfOneSize(cardCount, takers, stock));
    ASSERT_TRUE(plan.ok());
    const int least = fewestByEverySplit(cardCount, takers, atHand);
    EXPECT_LE(usedOf(*plan)[0], atHand) << round;
    EXPECT_EQ(plan->sheets, least) << round << ": " << takers << " people, " << atHand;
    std::int64_t bound = 0;
    for (const CardPlan& card : plan->cards) bound += card.plan.bound;
    EXPECT_LE(bound, least);
    if (cardCount * ((takers + 4) / 5) > atHand) ++shared;
  }
  EXPECT_GT(shared, 10);
}

// Two kinds of sheet that all cards want, one of five blanks and one of two.
TEST(SharedStock, SeveralScarceKindsAreNotCutTwice) {
  testing::Random random(918);
  int shared = 0;
  for (int round = 0; round < 20; ++round) {
    const int cardCount = random.whole(2, 3);
    const int takers = random.whole(4, 16);
    const std::vector<StockSheet> stock{
        {.name = "Big",
         .width = Length::mm(500),
         .height = Length::mm(700),
         .atHand = random.whole(1, 3)},
        {.name = "Middle",
         .width = Length::mm(297),
         .height = Length::mm(420),
         .atHand = random.whole(1, 3)},
        {.name = "Small", .width = Length::mm(210), .height = Length::mm(297)}};
    const auto plan = testing::planOf(cardsOfOneSize(cardCount, takers, stock));
    ASSERT_TRUE(plan.ok()) << round;
    std::map<int, int> used = usedOf(*plan);
    EXPECT_LE(used[0], stock[0].atHand) << round;
    EXPECT_LE(used[1], stock[1].atHand) << round;
    const int held = 5 * used[0] + 2 * used[1] + used[2];
    EXPECT_GE(held, cardCount * takers) << round;
    EXPECT_LT(plan->sheets, cardCount * takers) << round << ": larger sheets save some";
    shared += used[0] == stock[0].atHand && used[1] == stock[1].atHand ? 1 : 0;
  }
  EXPECT_GT(shared, 3);
}

TEST(SharedStock, TooFewForAllCardsIsSaid) {
  const std::vector<StockSheet> stock{
      {.name = "Big", .width = Length::mm(500), .height = Length::mm(700), .atHand = 2}};
  const auto plan = testing::planOf(cardsOfOneSize(2, 8, stock));
  ASSERT_FALSE(plan.ok());
  EXPECT_EQ(plan.problem().code, ProblemCode::StockTooFew);
}

/// The sheets that each card is cut from, by name.
std::map<std::string, std::set<std::string>> sheetsByColour(const KitPlan& plan) {
  std::map<std::string, std::set<std::string>> all;
  for (const CardPlan& card : plan.cards) {
    const CardColours& colours = card.card().colours;
    const std::string of = colours.pattern ? colours.pattern->id : cardColourText(colours);
    for (const Layout& layout : card.plan.layouts) all[of].insert(card.sheetOf(layout).name);
  }
  return all;
}

ClassKit colouredKit() {
  ClassKit kit;
  kit.takers = 6;
  const auto blank = [&kit](const char* name, CardColours colours) {
    Card card = cards()[0];
    card.colours = std::move(colours);
    kit.blanks.push_back({name, Length::mm(100), Length::mm(80), card});
  };
  blank("box", *parseCardColours("sage"));
  blank("label", *parseCardColours("plum"));
  blank("slip", *parseCardColours("cream"));
  blank("band", *withPattern(*parseCardColours("sage"), "leaves"));
  const auto sheet = [&kit](const char* name, const char* colour, int atHand) {
    StockSheet made{name, Length::mm(297), Length::mm(420)};
    made.colours = *parseCardColours(colour);
    made.atHand = made.owned = atHand;
    if (atHand < 0) made.owned = 0;
    kit.stock.push_back(made);
  };
  sheet("My sage A3", "sage", 40);
  sheet("My plum A3", "plum/plum", 40);
  sheet("A3", "plain", -1);
  return kit;
}

TEST(ColouredStock, ServesOnlyDesignsOfItsColour) {
  const auto plan = testing::planOf(colouredKit(), {.seconds = 0.2});
  ASSERT_TRUE(plan);
  const auto sheets = sheetsByColour(*plan);
  EXPECT_EQ(sheets.at("sage"), std::set<std::string>{"My sage A3"});
  EXPECT_EQ(sheets.at("plum"), std::set<std::string>{"My plum A3"});
  EXPECT_EQ(sheets.at("cream"), std::set<std::string>{"A3"});
  EXPECT_EQ(sheets.at("leaves"), std::set<std::string>{"A3"});
}

TEST(ColouredStock, ASheetWithoutAColourHelpsOutWhereTheOthersDoNotDo) {
  for (const PlanGoal goal : {PlanGoal::Fewest, PlanGoal::Easy}) {
    ClassKit kit = colouredKit();
    kit.goal = goal;
    kit.takers = 60;
    kit.stock[0].atHand = kit.stock[0].owned = 1;
    const auto plan = testing::planOf(kit, {.seconds = 0.2});
    ASSERT_TRUE(plan);
    const auto sheets = sheetsByColour(*plan);
    EXPECT_TRUE(sheets.at("sage").contains("A3"));
    EXPECT_FALSE(sheets.at("sage").contains("My plum A3"));
    for (const CardPlan& card : plan->cards)
      if (goal == PlanGoal::Fewest) {
        EXPECT_FALSE(checkPlan(card.plan, testing::cutStock(kit), card.demands()));
      }
  }
}

/// Two weights of sage share the sage sheets that are at hand; where they are too few, the plain
/// ones help.
TEST(ColouredStock, TwoCardsOfOneColourShareItsSheets) {
  ClassKit kit = colouredKit();
  kit.blanks.resize(1);
  kit.blanks.push_back(kit.blanks[0]);
  kit.blanks[1].card = cards()[1];
  kit.blanks[1].card.colours = kit.blanks[0].card.colours;
  kit.takers = 12;
  kit.stock[0].atHand = kit.stock[0].owned = 1;
  const auto plan = testing::planOf(kit, {.seconds = 0.2});
  ASSERT_TRUE(plan);
  int sage = 0;
  for (const CardPlan& card : plan->cards)
    for (const Layout& layout : card.plan.layouts)
      if (layout.stock == 0) sage += layout.count;
  EXPECT_LE(sage, 1);
}

TEST(ColouredStock, WhereNoSheetHasTheColourThatIsSaid) {
  ClassKit kit = colouredKit();
  kit.stock.pop_back();
  const auto plan = testing::planOf(kit);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().code, ProblemCode::NoSheetOfColour);
  EXPECT_EQ(std::get<std::string>(plan.problem().values.at(0)), "cream");
}

}  // namespace
}  // namespace creasewright
