#include "kits/class_kit.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/cutting/plan_check.h"
#include "core/kits/plan_of.h"
#include "document/build.h"
#include "kits/first_sheet.h"
#include "kits/layout_drawing.h"
#include "support/code_or_text.h"

namespace creasewright {
namespace {

ClassKit soapKit(int takers) {
  ClassKit kit;
  kit.title = "Soap evening";
  kit.takers = takers;
  kit.spares = 1;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"letter", Length::inches(17, 2), Length::inches(11)}};
  for (const char* style : {"two-piece-box", "belly-band"})
    kit.items.push_back(
        {*newDesign(style, *parseProduct("box:80x55x25mm"), {"c", "card", Length::mm(0.3), 0},
                    Ease::Easy, ToolGrid::sixteenthInch()),
         1});
  return kit;
}

TEST(ClassKit, ReadsWhatItWrote) {
  const ClassKit kit = soapKit(12);
  const auto read = readKit(writeKit(kit), "kit.cwkit");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(writeKit(*read), writeKit(kit));
  EXPECT_EQ(read->takers, 12);
  EXPECT_EQ(read->items.size(), 2u);
}

TEST(ClassKit, BlanksPiecesAndCountsAreSaved) {
  ClassKit kit = soapKit(12);
  kit.items[0].perPerson = 2;
  kit.items[0].piece = "lid";
  kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), cards()[1], 3}};
  kit.stock[0].basis = "65 lb cover";
  kit.stock[0].grammage = 176;
  kit.stock[0].caliper = Length::mm(0.24);
  kit.stock[0].oneSided = true;
  kit.stock[0].colours = *parseCardColours("sage/cream");
  kit.labelWidth = Length::inches(4);
  kit.noExtras = true;
  const auto read = readKit(writeKit(kit), "kit.cwkit");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(read->items[0].perPerson, 2);
  EXPECT_EQ(read->items[0].piece, "lid");
  EXPECT_EQ(read->blanks, kit.blanks);
  EXPECT_EQ(read->stock, kit.stock);
  EXPECT_EQ(read->labelWidth, kit.labelWidth);
  EXPECT_TRUE(read->noExtras);
  EXPECT_EQ(writeKit(*read), writeKit(kit));
}

/// Version 2 knew neither blanks nor pieces.
TEST(ClassKit, OlderKitsAreRead) {
  const ClassKit kit = soapKit(12);
  auto json = nlohmann::ordered_json::parse(writeKit(kit));
  json["version"] = 2;
  json.erase("blanks");
  json.erase("label");
  const auto read = readKit(json.dump(), "old.cwkit");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(writeKit(*read), writeKit(kit));
}

/// Version 3 had other names for the crossed-seam pouch and for adhesive dots.
TEST(ClassKit, OldNamesAreRead) {
  ClassKit kit = soapKit(12);
  kit.items[0].design =
      *newDesign("crossed-seam-pouch", std::nullopt, cards()[0], Ease::Easy, ToolGrid::none());
  kit.supplies = {{"D", "Dots", SupplyItemKind::AdhesiveDots, Length(), Length(), 100}};
  auto json = nlohmann::ordered_json::parse(writeKit(kit));
  json["version"] = 3;
  json["supplies"][0]["kind"] = "glue-dots";
  json["items"][0]["design"]["version"] = 2;
  json["items"][0]["design"]["style"] = "tetra-pouch";
  const auto read = readKit(json.dump(), "old.cwkit");
  ASSERT_TRUE(read) << read.problem().where;
  EXPECT_EQ(writeKit(*read), writeKit(kit));
}

TEST(ClassKit, RefusesWhatMakesNoSense) {
  const auto code = [](const std::string& text) { return readKit(text, "k").problem().code; };
  EXPECT_EQ(code("{}"), ProblemCode::NotAKit);
  EXPECT_EQ(code("[1,2"), ProblemCode::NotAKit);
  const auto changed = [&](const char* key, const nlohmann::ordered_json& value) {
    auto json = nlohmann::ordered_json::parse(writeKit(soapKit(3)));
    json[key] = value;
    return json.dump();
  };
  EXPECT_EQ(code(changed("version", 99)), ProblemCode::NewerVersion);
  EXPECT_EQ(code(changed("takers", 0)), ProblemCode::TakersWrong);
  EXPECT_EQ(code(changed("takers", 10000)), ProblemCode::TakersWrong);
  EXPECT_EQ(code(changed("takers", "many")), ProblemCode::FieldUnreadable);
  EXPECT_EQ(code(changed("items", 7)), ProblemCode::FieldUnreadable);
  EXPECT_EQ(code(changed("blanks", {{{"name", 1}}})), ProblemCode::FieldUnreadable);
  EXPECT_EQ(code(changed("label", {{"width", "1 mm"}, {"height", "50 mm"}})),
            ProblemCode::FieldUnreadable);
}

/// Every field of a kit in turn with values that make no sense: a kit comes back that can be
/// planned or refused, or a problem; nothing else happens.
TEST(ClassKit, HostileFieldsGiveAKitOrAProblem) {
  ClassKit kit = soapKit(3);
  kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), cards()[1], 2}};
  kit.supplies = {{"T", "Tape", SupplyItemKind::Tape, Length::mm(6), Length::mm(25000)}};
  kit.names = {"Ada"};
  const auto whole = nlohmann::ordered_json::parse(writeKit(kit));
  const std::vector<nlohmann::ordered_json> hostile{nullptr,
                                                    -1,
                                                    0,
                                                    1e308,
                                                    4611686018427387904,
                                                    "",
                                                    "1e999 mm",
                                                    "-3 in",
                                                    true,
                                                    nlohmann::ordered_json::object(),
                                                    nlohmann::ordered_json::array(),
                                                    std::string(5000, 'x')};
  int read = 0;
  int refused = 0;
  const auto fields = whole.flatten();
  for (const auto& [path, value] : fields.items())
    for (std::size_t h = 0; h < hostile.size(); ++h) {
      auto changed = whole;
      changed[nlohmann::ordered_json::json_pointer(path)] = hostile[h];
      const auto result = readKit(changed.dump(), "k");
      (result ? read : refused)++;
      if (result && h % 4 == 0) {
        const auto plan = testing::planOf(*result, {.seconds = 0.02, .fewestLayouts = false});
        EXPECT_TRUE(plan.ok() || !codeName(plan.problem().code).empty()) << path;
      }
    }
  EXPECT_GT(read, 50);
  EXPECT_GT(refused, 500);
}

TEST(PlanKit, CutsEveryPieceForEverybody) {
  const ClassKit kit = soapKit(12);
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  ASSERT_EQ(plan->cards.size(), 1u);
  const CardPlan& card = plan->cards[0];
  EXPECT_EQ(card.demands().size(), 3u);  // tray, lid, band
  for (const BlankDemand& demand : card.demands()) EXPECT_EQ(demand.quantity, 13);
  EXPECT_EQ(testing::planFault(card.plan, testing::cutStock(kit), card.demands()), "");
  EXPECT_TRUE(plan->proven);
  EXPECT_FALSE(plan->built->tapes.empty());
  const auto json = nlohmann::json::parse(kitJson(*plan));
  EXPECT_EQ(json["sheets"], plan->sheets);
  int pieces = 0;
  for (const auto& layout : json["cards"][0]["layouts"])
    pieces += layout["count"].get<int>() * static_cast<int>(layout["pieces"].size());
  EXPECT_GE(pieces, 39);
}

TEST(PlanKit, PlainBlanksAndSinglePiecesAreOnlyCut) {
  ClassKit kit = soapKit(12);
  kit.items[0].piece = "lid";
  kit.items[0].perPerson = 2;
  kit.items.pop_back();
  kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), kit.items[0].design.card, 3},
                {"Strip", Length::inches(1), Length::inches(8), cards()[2], 1}};
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  ASSERT_EQ(plan->cards.size(), 2U);
  ASSERT_EQ(plan->cards[0].demands().size(), 2U);
  EXPECT_EQ(plan->cards[0].sources()[0].piece, "lid");
  EXPECT_EQ(plan->cards[0].demands()[0].quantity, 26);
  EXPECT_EQ(plan->cards[0].demands()[1].quantity, 39);
  EXPECT_EQ(plan->cards[0].sources()[1].item, -1);
  EXPECT_EQ(plan->cards[1].firstLetter(), 2);
  EXPECT_EQ(plan->built->minutes(0), 0);
  EXPECT_TRUE(plan->built->tapes.empty());
  for (const CardPlan& card : plan->cards)
    EXPECT_EQ(testing::planFault(card.plan, testing::cutStock(kit), card.demands()), "");
  kit.items[0].piece = "spout";
  const auto none = testing::planOf(kit);
  ASSERT_FALSE(none);
  EXPECT_EQ(none.problem().code, ProblemCode::PieceUnknown);
}

/// A class takes the usual sheet when it holds everything, else the smallest that does.
TEST(PlanKit, ChoosesASheetThatHoldsEveryBlank) {
  ClassKit kit;
  kit.blanks = {{"Panel", Length::mm(250), Length::mm(200), cards()[0], 1}};
  const std::vector<StockSheet> stock{{"A4", Length::mm(210), Length::mm(297)},
                                      {"12x12", Length::inches(12), Length::inches(12)},
                                      {"A3", Length::mm(297), Length::mm(420)}};
  EXPECT_EQ(firstSheetFor(buildKit(kit).value(), stock, 0), 0);
  kit.blanks[0].height = Length::mm(220);
  EXPECT_EQ(firstSheetFor(buildKit(kit).value(), stock, 0), 2);  // metric before inches
  EXPECT_EQ(firstSheetFor(buildKit(kit).value(), stock, 1), 1);
  kit.blanks[0].height = Length::mm(900);
  EXPECT_EQ(firstSheetFor(buildKit(kit).value(), stock, 0), 0);
}

TEST(PlanKit, SaysWhatOneMoreTakes) {
  const ClassKit kit = soapKit(5);
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  const auto more = oneMoreFor(*plan);
  ASSERT_TRUE(more);
  EXPECT_GE(more->sheets, 0);
  EXPECT_LE(more->sheets, 3);
  EXPECT_EQ(more->price, 0);
  const auto json = nlohmann::json::parse(kitJson(withFindings(*plan)));
  EXPECT_EQ(json["one_more"]["sheets"], more->sheets);
  EXPECT_TRUE(nlohmann::json::parse(kitJson(*plan))["one_more"].is_null());
  // With prices it is told what the next person costs.
  ClassKit priced = kit;
  for (StockSheet& sheet : priced.stock) sheet.price = 50;
  const auto costs = oneMoreFor(testing::planOf(priced).value());
  ASSERT_TRUE(costs);
  EXPECT_EQ(costs->price, 50 * costs->sheets);
}

TEST(PlanKit, ABlankLargerThanEverySheetIsNamed) {
  ClassKit kit = soapKit(5);
  kit.stock = {{"tiny", Length::mm(50), Length::mm(50)}};
  const auto plan = testing::planOf(kit);
  ASSERT_FALSE(plan);
  EXPECT_EQ(plan.problem().code, ProblemCode::BlankTooLarge);
  EXPECT_FALSE(plan.problem().where.empty());
}

TEST(LayoutDrawing, StaysInItsRoomAndNamesEveryBlank) {
  const ClassKit kit = soapKit(12);
  const auto plan = testing::planOf(kit);
  ASSERT_TRUE(plan);
  for (const Layout& layout : plan->cards[0].plan.layouts) {
    const Drawing drawing = drawLayout(layout, 90, 120, 0, testing::codeOrText);
    EXPECT_LE(drawing.width, 90 + 1e-9);
    EXPECT_LE(drawing.height, 120 + 1e-9);
    int blanks = 0;
    eachNode(layout.sheet, [&](const CutNode& n) { blanks += n.kind == CutNode::Kind::Blank; });
    EXPECT_GE(drawing.texts.size(), static_cast<std::size_t>(blanks));
  }
  EXPECT_EQ(demandLetter(0), "A");
  EXPECT_EQ(demandLetter(25), "Z");
  EXPECT_EQ(demandLetter(26), "AA");
}

}  // namespace
}  // namespace creasewright
