#include "kits/shopping.h"

#include <cmath>

#include <gtest/gtest.h>

#include "core/kits/plan_of.h"
#include "extras/extra_kind.h"

namespace creasewright {
namespace {

ClassKit smallKit() {
  ClassKit kit;
  kit.takers = 10;
  Design tray = *newDesign("framed-tray", *parseProduct("box:80x60x20mm"), cards()[0], Ease::Easy,
                           ToolGrid::sixteenthInch());
  const ExtraKind& ribbon = **findExtraKind("ribbon");
  tray.extras.push_back(standardExtra(ribbon, tray.card));
  tray.extras.push_back(
      standardExtra(**findExtraKind("belly-band"), tray.card));  // for it to lie on
  tray.extras.back().parameters.setCount("full", 1);
  kit.items.push_back({tray, 1});
  kit.stock = {{"12 x 12 in", Length::inches(12), Length::inches(12), 50}};
  kit.stock[0].owned = 2;
  return kit;
}

TEST(Shopping, WholePacksAreBoughtAndWhatIsAtHandIsTakenOff) {
  ClassKit kit = smallKit();
  const KitPlan bare = testing::planOf(kit).value();
  ASSERT_EQ(bare.built->ribbons.size(), 1U);
  ASSERT_FALSE(bare.built->tapes.empty());
  kit.supplies = {{"R", "Ribbon", SupplyItemKind::Ribbon, bare.built->ribbons[0].width,
                   Length::mm(3000), 0, 320, 1},
                  {"T", "Tape", SupplyItemKind::Tape, bare.built->tapes[0].width, Length::mm(25000),
                   0, 450, 0}};
  const ShoppingList list = shoppingFor(testing::planOf(kit).value());
  const ShoppingLine& sheets = list.lines.at(0);
  EXPECT_EQ(sheets.needed, bare.sheets);
  EXPECT_EQ(sheets.toBuy, bare.sheets - 2);
  EXPECT_EQ(sheets.cost, 50 * (bare.sheets - 2));
  for (const ShoppingLine& line : list.lines) {
    if (line.kind == ShoppingLine::Kind::Ribbon) {
      const int packs = static_cast<int>(std::ceil(bare.built->ribbons[0].length.mm() / 3000));
      EXPECT_EQ(line.needed, packs);
      EXPECT_EQ(line.cost, 320 * (packs - 1));
    }
  }
  std::int64_t sum = 0;
  for (const ShoppingLine& line : list.lines) sum += line.cost;
  EXPECT_EQ(list.cost, sum);
}

/// 6 mm and 1/4 in are cut from one roll: it is bought, and taken from the shelf, once.
TEST(Shopping, OneRollServesAllThatIsCutFromIt) {
  BuiltKit built = buildKit(smallKit()).value();
  built.ribbons.clear();
  built.gluePlaces = 0;
  built.tapes = {{Length::mm(6), Length::mm(9000), 10},
                 {Length::inches(1, 4), Length::mm(9000), 10}};
  built.kit.supplies = {
      {"T", "Tape", SupplyItemKind::Tape, Length::inches(1, 4), Length::mm(10000), 0, 450, 1}};
  KitPlan plan;
  plan.built = std::make_shared<const BuiltKit>(built);
  const ShoppingList list = shoppingFor(plan);
  ASSERT_EQ(list.lines.size(), 1U);
  EXPECT_EQ(list.lines[0].needed, 2);
  EXPECT_EQ(list.lines[0].atHand, 1);
  EXPECT_EQ(list.cost, 450);
}

/// A roll has one colour; what is at hand is taken from the shelf once.
TEST(Shopping, RibbonsOfTwoColoursAreTwoRolls) {
  ClassKit kit = smallKit();
  const auto made = [&](std::optional<Colour> colour) {
    Design tray = smallKit().items[0].design;
    tray.extras[0].card.colours.face = colour;
    return KitItem{tray, 1};
  };
  const Colour plum = *parseColour("plum");
  kit.items = {made(plum), made(*parseColour("sage")), made(plum)};
  const BuiltKit bare = buildKit(kit).value();
  ASSERT_EQ(bare.ribbons.size(), 2U);
  const Length width = bare.ribbons[0].width;
  kit.supplies = {{"R", "Ribbon", SupplyItemKind::Ribbon, width, Length::mm(100'000), 0, 320, 1}};
  const KitPlan plan = testing::planOf(kit).value();
  int atHand = 0;
  Length ofPlum;
  for (const ShoppingLine& line : shoppingFor(plan).lines) {
    if (line.kind != ShoppingLine::Kind::Ribbon) continue;
    ASSERT_TRUE(line.colour);
    atHand += line.atHand;
    if (line.colour == plum) ofPlum = line.length;
  }
  EXPECT_EQ(atHand, 1);
  EXPECT_EQ(ofPlum, bare.items[0]->guide.supplies.back().length * (2 * kit.sets()));
}

/// What fills packs to the last piece takes no other one; a piece more does.
TEST(Shopping, PacksThatAreJustFilledAreEnough) {
  BuiltKit built = buildKit(smallKit()).value();
  built.ribbons.clear();
  built.kit.supplies = {
      {"T", "Tape", SupplyItemKind::Tape, Length::mm(6), Length::mm(9000), 0, 450, 0},
      {"G", "Glue", SupplyItemKind::Glue, Length(), Length(), 20, 300, 0}};
  const auto needed = [&](Length tape, int places) {
    built.tapes = {{Length::mm(6), tape, 10}};
    built.gluePlaces = places;
    KitPlan plan;
    plan.built = std::make_shared<const BuiltKit>(built);
    std::vector<int> packs;
    for (const ShoppingLine& line : shoppingFor(plan).lines) packs.push_back(line.needed);
    return packs;
  };
  EXPECT_EQ(needed(Length::mm(18'000), 60), (std::vector{2, 3}));
  EXPECT_EQ(needed(Length::mm(18'000) + Length::nanometres(1), 61), (std::vector{3, 4}));
  EXPECT_EQ(needed(Length::mm(1), 1), (std::vector{1, 1}));
}

TEST(Kit, BlanksKeepToTheGrain) {
  ClassKit kit = smallKit();
  kit.items[0].design.extras.clear();
  const KitPlan plan = testing::planOf(kit).value();
  const BlankDemand blank = plan.cards[0].demands()[0];
  ASSERT_GT(blank.width, blank.height);
  // A sheet as wide as the blank is high: it fits only when turned.
  kit.stock = {{"strip", blank.height, Length::inches(12), 0}};
  kit.stock[0].grain = Grain::Long;
  EXPECT_TRUE(testing::planOf(kit).ok());
  kit.keepGrain = true;
  const Result<KitPlan> stopped = testing::planOf(kit);
  ASSERT_FALSE(stopped.ok());
  EXPECT_EQ(stopped.problem().code, ProblemCode::GrainConflict);
  // With the grain across, the sheet itself is turned.
  kit.stock[0].grain = Grain::Short;
  const Result<KitPlan> turned = testing::planOf(kit);
  ASSERT_TRUE(turned.ok());
  for (const Layout& layout : turned->cards[0].plan.layouts)
    eachNode(layout.sheet, [](const CutNode& node) { EXPECT_FALSE(node.turned); });
}

TEST(Kit, ItsNamesSuppliesAndSheetsAreSaved) {
  ClassKit kit = smallKit();
  kit.names = {"Ada", "Ben"};
  kit.keepGrain = true;
  kit.stock[0].code = "K12";
  kit.stock[0].grain = Grain::Short;
  kit.supplies = {
      {"R", "Ribbon", SupplyItemKind::Ribbon, Length::mm(15), Length::mm(3000), 0, 320, 1}};
  const Result<ClassKit> read = readKit(writeKit(kit), "a.cwkit");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(read->names, kit.names);
  EXPECT_EQ(read->supplies, kit.supplies);
  EXPECT_TRUE(read->keepGrain);
  EXPECT_EQ(writeKit(*read), writeKit(kit));
}

TEST(Kit, SheetsOfAnotherCardAreNotUsed) {
  ClassKit kit = smallKit();
  kit.stock.push_back({"large", Length::inches(24), Length::inches(24), 50});
  kit.stock[1].card = "index-90lb";
  const KitPlan any = testing::planOf(kit).value();
  for (const Layout& layout : any.cards[0].plan.layouts) EXPECT_EQ(layout.stock, 0);
  kit.items[0].design.card = *findCard("index-90lb");
  const KitPlan own = testing::planOf(kit).value();
  for (const Layout& layout : own.cards[0].plan.layouts) EXPECT_EQ(layout.stock, 1);
}

}  // namespace
}  // namespace creasewright
