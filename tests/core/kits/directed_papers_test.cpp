#include <gtest/gtest.h>

#include "core/kits/plan_of.h"
#include "document/paper_way.h"
#include "fit/card_pattern.h"
#include "kits/machine_layouts.h"

namespace creasewright {
namespace {

/// A class that makes two boxes and their mats of one paper.
ClassKit paperKit(const std::string& pattern) {
  ClassKit kit;
  kit.title = "Papers";
  kit.takers = 11;
  kit.stock = {{"12x12", Length::inches(12), Length::inches(12)},
               {"a4", Length::mm(210), Length::mm(297)}};
  Card card{"c", "paper", Length::mm(0.25), 0};
  card.colours = *withPattern({}, pattern);
  for (const char* style : {"two-piece-box", "straight-tuck-box", "belly-band"})
    kit.items.push_back({*newDesign(style, *parseProduct("box:70x42x21mm"), card, Ease::Easy,
                                    ToolGrid::sixteenthInch()),
                         1});
  return kit;
}

int turnedIn(const KitPlan& plan) {
  int turned = 0;
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.plan.layouts)
      eachNode(layout.sheet, [&](const CutNode& node) {
        turned += node.kind == CutNode::Kind::Blank && node.turned;
      });
  return turned;
}

// Law: a blank is turned by a quarter only on a paper whose class of turns has that.
TEST(DirectedPapers, BlanksLieOnlyAsTheirPaperLets) {
  int free = 0;
  for (const char* id : {"dots", "gingham", "stripes", "herringbone", "scallops", "leaves"}) {
    const PatternKind& pattern = *patternCalled(id);
    const auto plan = testing::planOf(paperKit(std::string(pattern.id)));
    ASSERT_TRUE(plan) << pattern.id;
    const bool quarter = pattern.turns == Turns::Any || pattern.turns == Turns::Quarter;
    const int turned = turnedIn(*plan);
    if (quarter)
      free += turned;
    else
      EXPECT_EQ(turned, 0) << pattern.id;
  }
  EXPECT_GT(free, 0) << "no plan turns a blank, so nothing was judged";
}

/// The way up of a piece's paper on its blank as the net is drawn, turned left by quarters.
Point upOnMat(const BuiltDesign& design, const BuiltPiece& piece, int quarters) {
  const Point up = paperUp(design, piece);
  const Point3 there = piece.flat.frames.front().turn({up.x, up.y, 0});
  Point way{there.x, there.y};
  for (int q = 0; q < quarters; ++q) way = turnLeft(way);
  return way;
}

// Law: on the mat of a machine too the print of every piece stands as its class of turns asks.
TEST(DirectedPapers, NetsLieOnlyAsTheirPaperLets) {
  for (const char* id : {"leaves", "stripes"}) {
    const PatternKind& pattern = *patternCalled(id);
    const auto built = buildKit(paperKit(id));
    ASSERT_TRUE(built);
    const auto plan = planMachine(*built, Length::inches(12), Length::inches(12));
    ASSERT_TRUE(plan);
    int parts = 0;
    for (std::size_t c = 0; c < plan->cards.size(); ++c)
      for (const MatLayout& layout : plan->cards[c].layouts)
        for (const NestedPart& nested : layout.parts) {
          const BlankSource& source =
              plan->built->cards[c].sources[static_cast<std::size_t>(nested.part)];
          const BuiltDesign& design =
              plan->built->items[static_cast<std::size_t>(source.item)]->design;
          const Point up = upOnMat(design, design.pieces[source.at], nested.quarters);
          ++parts;
          if (pattern.turns == Turns::None) {
            EXPECT_GT(up.y, 0.99) << id;
          }
          if (pattern.turns == Turns::Half) {
            EXPECT_GT(std::abs(up.y), 0.99) << id;
          }
        }
    EXPECT_GT(parts, 3);
  }
}

TEST(DirectedPapers, ANetIsTurnedOnlyTheWaysItMay) {
  NestPart part{"strip", {{0, 0}, {90, 0}, {90, 30}, {0, 30}}, 90, 30, 1};
  const auto nested = [&](std::vector<int> ways) {
    part.ways = std::move(ways);
    return nest({part}, Length::mm(50), Length::mm(200));
  };
  EXPECT_EQ(nested({0}).problem().code, ProblemCode::BlankTooLarge);
  EXPECT_EQ(nested({0, 2}).problem().code, ProblemCode::BlankTooLarge);
  EXPECT_EQ(nested({3})->front().parts.front().quarters, 3);
  EXPECT_TRUE(nested({}));
}

// The width of a blank on a paper that may not be turned runs across the paper; what goes round the
// box the other way is cut the other way.
TEST(DirectedPapers, WidthsRunAcrossThePaper) {
  Design design =
      *newDesign("straight-tuck-box", {}, *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.card.colours = *withPattern({}, "stripes");
  design.extras = {standardExtra(**findExtraKind("belly-band"), design.card)};
  design.extras[0].card = design.card;
  const auto built = build(design);
  ASSERT_TRUE(built);
  BuiltPiece band = built->pieces.back();
  ASSERT_TRUE(band.role && band.role->around);
  const Length width = Length::mm(band.flat.width);
  const Length height = Length::mm(band.flat.height);
  ASSERT_NE(width, height);
  const auto blank = [&] { return blankOf(*built, band, "band", 1); };
  EXPECT_FALSE(blank().mayTurn);
  EXPECT_EQ(blank().width, width);
  EXPECT_EQ(blank().height, height);
  EXPECT_GT(std::abs(upOnMat(*built, band, 0).y), 0.99);
  for (const double turn : {90.0, -90.0}) {
    const Transform usual = *built->pieces.back().role->around;
    band.role->around = usual.after(Transform::rotationZ(Angle::degrees(turn)));
    EXPECT_EQ(blank().width, height);
    EXPECT_EQ(blank().height, width);
    EXPECT_GT(upOnMat(*built, band, quartersToPaper(*built, band)).y, 0.99);
  }
}

}  // namespace
}  // namespace creasewright
