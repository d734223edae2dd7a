#include "kits/build_kit.h"

#include <gtest/gtest.h>

#include "core/kits/plan_of.h"

namespace creasewright {
namespace {

Design boxOf(const char* style) {
  return *newDesign(style, *parseProduct("box:80x55x25mm"), cards()[0], Ease::Easy,
                    ToolGrid::sixteenthInch());
}

ClassKit twoDesigns() {
  ClassKit kit;
  kit.takers = 9;
  kit.spares = 1;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)}};
  kit.items = {{boxOf("two-piece-box"), 2}, {boxOf("belly-band"), 1}};
  kit.blanks = {{"Panel", Length::inches(4), Length::inches(6), cards()[2], 3}};
  return kit;
}

/// Every demand is the blank of the piece it names, for all sets; letters run on over the cards.
TEST(BuildKit, EveryBlankStandsForItsPiece) {
  const BuiltKit built = buildKit(twoDesigns()).value();
  ASSERT_EQ(built.items.size(), 2U);
  ASSERT_EQ(built.cards.size(), 2U);
  int letter = 0;
  int pieces = 0;
  for (const CardBlanks& card : built.cards) {
    ASSERT_EQ(card.demands.size(), card.sources.size());
    EXPECT_EQ(card.firstLetter, letter);
    letter += static_cast<int>(card.demands.size());
    for (std::size_t d = 0; d < card.demands.size(); ++d) {
      const BlankSource& source = card.sources[d];
      EXPECT_EQ(card.demands[d].quantity, 10 * source.perSet);
      if (source.item < 0) continue;
      const BuiltPiece& piece =
          built.items[static_cast<std::size_t>(source.item)]->design.pieces.at(source.at);
      EXPECT_EQ(piece.name, source.piece);
      EXPECT_EQ(card.demands[d].width, Length::mm(piece.flat.width));
      ++pieces;
    }
  }
  EXPECT_EQ(pieces, 3);  // tray, lid, band
  EXPECT_GT(built.minutes(0), 0);
  EXPECT_FALSE(built.tapes.empty());
}

/// What was built is not built again: a change to the numbers shares all designs, a change to one
/// design the others.
TEST(BuildKit, KnownDesignsAreTakenOver) {
  const BuiltKit first = buildKit(twoDesigns()).value();
  ClassKit kit = twoDesigns();
  kit.takers = 20;
  kit.items[1].design.title = "Band";
  const BuiltKit second = buildKit(kit, &first).value();
  EXPECT_EQ(second.items[0], first.items[0]);
  EXPECT_NE(second.items[1], first.items[1]);
  EXPECT_EQ(second.items[1]->design.design.title, "Band");
  EXPECT_EQ(second.cards[0].demands[0].quantity, first.cards[0].demands[0].quantity / 10 * 21);
}

/// A plan holds what it is of, wherever it goes.
TEST(BuildKit, APlanOutlivesWhatItWasMadeFrom) {
  KitPlan kept;
  std::string text;
  {
    auto built = std::make_unique<BuiltKit>(buildKit(twoDesigns()).value());
    KitPlan plan = planKit(*built).value();
    text = kitJson(plan);
    built.reset();
    const KitPlan copy = plan;
    plan = KitPlan();
    kept = copy;
  }
  const KitPlan moved = std::move(kept);
  EXPECT_EQ(kitJson(moved), text);
  for (const CardPlan& card : moved.cards) EXPECT_EQ(&card.kit(), &moved.kit());
  EXPECT_EQ(moved.kit().takers, 9);
}

TEST(BuildKit, WhatCannotBeBuiltIsAProblem) {
  const auto code = [](const ClassKit& kit) { return buildKit(kit).problem().code; };
  EXPECT_EQ(code({}), ProblemCode::NoDemand);
  ClassKit kit = twoDesigns();
  kit.takers = 0;
  EXPECT_EQ(code(kit), ProblemCode::TakersWrong);
  kit = twoDesigns();
  kit.items[0].piece = "spout";
  EXPECT_EQ(code(kit), ProblemCode::PieceUnknown);
  kit = twoDesigns();
  kit.items[1].design.styleId = "no-style";
  EXPECT_EQ(code(kit), ProblemCode::UnknownStyle);
}

}  // namespace
}  // namespace creasewright
