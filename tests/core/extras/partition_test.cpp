#include <array>
#include <cmath>

#include "core/extras/built_extras.h"
#include "pages/gift.h"
#include "support/pierced.h"

// Partitions, judged in space: nothing here asks how they were made.

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;

constexpr std::array kBoxes{"two-piece-box", "drawer-box", "straight-tuck-box", "framed-tray",
                            "hinged-lid-box"};

Design partedBox(testing::Random& random, const char* style) {
  const Product product{ProductShape::Box, Length::mm(random.between(90, 200)),
                        Length::mm(random.between(70, 150)), Length::mm(random.between(25, 70))};
  const ToolGrid grid =
      random.whole(0, 1) == 0 ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  Design design = *newDesign(style, product, *findCard("300gsm"), Ease::Easy, grid);
  Extra parts = extraOf("partition", design);
  parts.parameters.setCount("columns", random.whole(2, 5));
  parts.parameters.setCount("rows", random.whole(2, 4));
  parts.parameters.setCount("piece-form", random.whole(0, 3));
  design.extras = {parts};
  return design;
}

/// The room of the holder in a scene: a frame and its corners in it.
struct Room {
  Transform into;
  Point3 low;
  Point3 high;
  std::size_t up = 0;

  [[nodiscard]] bool holds(Point3 p, bool above) const {
    const Point3 at = into.apply(p);
    const std::array<double, 3> xs{at.x, at.y, at.z};
    const std::array<double, 3> lows{low.x, low.y, low.z};
    const std::array<double, 3> highs{high.x, high.y, high.z};
    for (std::size_t i = 0; i < 3; ++i)
      if ((i != up || !above) && (xs.at(i) < lows.at(i) - 1e-3 || xs.at(i) > highs.at(i) + 1e-3))
        return false;
    return true;
  }
};

Room roomIn(const BuiltDesign& whole, const GiftScene& scene) {
  for (std::size_t i = 0; i < whole.pieces.size(); ++i) {
    const BuiltPiece& piece = whole.pieces[i];
    if (piece.role || !piece.cavity || piece.over) continue;
    const int panel = *piece.net.find(piece.cavity->panel);
    for (std::size_t k = 0; k < scene.shown.owners.size(); ++k)
      if (scene.shown.owners[k].piece == static_cast<int>(i) &&
          scene.shown.owners[k].panel == panel)
        return {scene.shown.pose[k].inverse(), piece.cavityBox.low, piece.cavityBox.high,
                static_cast<std::size_t>(piece.cavity->axes[2])};
  }
  ADD_FAILURE() << "no room";
  return {};
}

std::vector<std::size_t> stripsOf(const BuiltDesign& whole, const GiftScene& scene) {
  std::vector<std::size_t> strips;
  for (std::size_t i = 0; i < scene.shown.owners.size(); ++i) {
    const int piece = scene.shown.owners[i].piece;
    if (piece >= 0 && whole.pieces[static_cast<std::size_t>(piece)].role) strips.push_back(i);
  }
  return strips;
}

/// Strips that cross, each pair once; they go through each other nowhere.
int crossings(const GiftScene& scene, const std::vector<std::size_t>& strips) {
  int crossed = 0;
  for (const std::size_t i : strips)
    for (const std::size_t k : strips) {
      if (k >= i) continue;
      const Dressed& shown = scene.shown;
      EXPECT_FALSE(testing::panelsCut(shown.net.panels[i], shown.pose[i], shown.net.panels[k],
                                      shown.pose[k], 0.05));
      if (shown.owners[i].piece == shown.owners[k].piece) continue;
      Panel bare = shown.net.panels[i];  // without its slots
      const Bounds box = bounds(bare.outline);
      bare.outline = {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
      crossed += testing::panelsCut(bare, shown.pose[i], shown.net.panels[k], shown.pose[k], 0.05);
    }
  return crossed;
}

/// Every piece of the product is in the room and wholly on one side of every strip, and no two of
/// them are in one cell.
void expectOneInEachCell(const GiftScene& scene, const Room& room,
                         const std::vector<std::size_t>& strips, double caliper) {
  std::vector<std::vector<bool>> cells;
  for (const Solid& solid : scene.solids) {
    std::vector<bool> sides;
    for (const std::size_t s : strips) {
      double low = 1e9;
      double high = -1e9;
      for (const auto& face : solid.faces)
        for (const Point3& p : face) {
          const double at = scene.shown.pose[s].inverse().apply(p).z;
          low = std::min(low, at);
          high = std::max(high, at);
        }
      EXPECT_TRUE(low > caliper / 2 - 1e-6 || high < -caliper / 2 + 1e-6) << low << ' ' << high;
      sides.push_back(low + high > 0);
    }
    EXPECT_EQ(std::ranges::find(cells, sides), cells.end());
    cells.push_back(std::move(sides));
    for (const auto& face : solid.faces)
      for (const Point3& p : face) EXPECT_TRUE(room.holds(p, true));
  }
}

// Law: for random boxes and numbers of cells the strips stand in the room of the product, cross in
// their slots and nowhere else, are on the grid, and each cell holds a piece of the product.
TEST(Partition, StandsInItsBoxAndHoldsAPieceInEachCell) {
  testing::Random random(192);
  int made = 0;
  for (const char* style : kBoxes)
    for (int round = 0; round < 6; ++round) {
      SCOPED_TRACE(std::string(style) + ' ' + std::to_string(round));
      const Design design = partedBox(random, style);
      const BuiltDesign whole = built(design);
      const auto columns = static_cast<int>(design.extras[0].parameters.count("columns"));
      const auto rows = static_cast<int>(design.extras[0].parameters.count("rows"));
      if (testing::piecesOf(whole, 0).empty()) {
        EXPECT_FALSE(whole.problems.empty());
        continue;
      }
      ++made;
      const Gift gift(whole);
      const GiftScene scene = gift.at({.opening = kOpen});
      const Room room = roomIn(whole, scene);
      const std::vector<std::size_t> strips = stripsOf(whole, scene);
      ASSERT_EQ(std::ssize(strips), columns + rows - 2);
      for (const std::size_t i : strips)
        for (const Point& p : scene.shown.net.panels[i].outline)
          EXPECT_TRUE(room.holds(scene.shown.pose[i].apply(p), false));
      EXPECT_EQ(crossings(scene, strips), (columns - 1) * (rows - 1));
      ASSERT_EQ(std::ssize(scene.solids), columns * rows);
      expectOneInEachCell(scene, room, strips, design.card.caliper.mm());
      for (const BuiltPiece* piece : testing::piecesOf(whole, 0))
        EXPECT_TRUE(design.grid.holds(Length::mm(piece->flat.width))) << piece->flat.width;
    }
  EXPECT_GT(made, 20);
}

TEST(Partition, WhatIsTooHighOrTooLargeIsRefusedWithItsNumbers) {
  testing::Random random(193);
  Design design = partedBox(random, "two-piece-box");
  design.extras[0].parameters.set("height", mm(200));
  BuiltDesign whole = built(design);
  ASSERT_EQ(whole.problems.size(), 1U);
  EXPECT_EQ(whole.problems[0].code, ProblemCode::ExtraTooLarge);
  EXPECT_EQ(std::get<Length>(whole.problems[0].values.at(0)), mm(200));
  design.extras[0].parameters.set("height", Length());
  design.extras[0].parameters.set("piece-size", mm(150));
  whole = built(design);
  ASSERT_EQ(whole.problems.size(), 1U);
  EXPECT_EQ(whole.problems[0].code, ProblemCode::ExtraTooLarge);
  EXPECT_TRUE(testing::piecesOf(whole, 0).empty());
}

// Each strip is held to its own partition, also where the box is one.
TEST(Partition, StripsKeepToTheirOwnPartition) {
  testing::Random random(194);
  for (const char* style : {"two-piece-box", "framed-tray"}) {
    Design design = partedBox(random, style);
    const BuiltDesign whole = built(design);
    const auto strips = testing::piecesOf(whole, 0);
    ASSERT_EQ(strips.size(), 2U) << style;
    ASSERT_TRUE(strips[1]->held);
    EXPECT_EQ(strips[1]->held->to, strips[0]->name);
  }
}

}  // namespace
}  // namespace creasewright
