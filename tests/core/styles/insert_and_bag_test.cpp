#include <cmath>

#include <gtest/gtest.h>

#include "document/build.h"
#include "net/net_builder.h"
#include "support/vertices.h"

namespace creasewright {
namespace {

BuiltDesign standard(std::string_view style) {
  const auto design = newDesign(style, std::nullopt, {"test", "", Length::mm(0.4), 0}, Ease::Easy,
                                ToolGrid::none());
  const auto built = build(*design);
  EXPECT_TRUE(built.ok());
  return *built;
}

/// Slots are as wide as the card to 0.2 mm more, and an insert is 1 mm smaller than its box (common
/// practice, no published source).
TEST(PartitionInsert, SlotsAndLengthsAreTheTrades) {
  const BuiltDesign built = standard("partition-insert");
  const double t = 0.4;
  for (const BuiltPiece& piece : built.pieces) {
    const bool along = piece.name == "long-divider";
    const auto cells =
        static_cast<double>(built.design.parameters.count(along ? "columns" : "rows"));
    const double pitch = built.design.parameters.mm(along ? "cell-length" : "cell-width");
    EXPECT_NEAR(piece.flat.width, cells * pitch - t - 1, 1e-9);
    const Panel& divider = piece.net.panels[0];
    int slots = 0;
    for (std::size_t i = 0; i + 1 < divider.outline.size(); ++i) {
      const double run = std::abs(divider.outline[i + 1].x - divider.outline[i].x);
      if (divider.edges[i] != "slot" || run < 1e-9) continue;
      ++slots;
      EXPECT_GE(run, t);
      EXPECT_LE(run, t + 0.2);
    }
    EXPECT_EQ(slots, static_cast<int>(cells) - 1);
  }
}

/// Each divider's slots lie where the other dividers stand, and their depths together let the
/// edges come level.
TEST(PartitionInsert, SlotsLetTheDividersPass) {
  const BuiltDesign built = standard("partition-insert");
  double together = 0;
  for (const BuiltPiece& piece : built.pieces) {
    double low = 1e9;
    double high = -1e9;
    const Panel& divider = piece.net.panels[0];
    for (std::size_t i = 0; i < divider.outline.size(); ++i) {
      if (divider.edges[i] != "slot") continue;
      low = std::min(low, divider.outline[i].y);
      high = std::max(high, divider.outline[i].y);
    }
    together += high - low;
  }
  EXPECT_GE(together, built.design.parameters.mm("height"));
}

/// Kawasaki (alternate sectors sum to 180 degrees) wherever creases meet inside the card: an apex
/// and a place on the back's edge on either side.
TEST(GussetedBag, GussetsFoldFlat) {
  const BuiltDesign built = standard("gusseted-bag");
  const BuiltPiece& bag = built.pieces[0];
  const auto vertices = interiorVertices(bag.net, bag.flat);
  for (const InteriorVertex& vertex : vertices) {
    EXPECT_EQ(vertex.creases.size(), 4u);
    EXPECT_NEAR(vertex.kawasakiExcess(), 0, 1e-9);
  }
  EXPECT_EQ(vertices.size(), 4u);
}

/// Whatever seam and holes a bag takes, both holes lie beside the seam and each other, in card of 3
/// mm at least between the holes.
TEST(GussetedBag, HolesStayApartBesideTheWidestSeam) {
  for (const int hole : {4, 8, 16}) {
    Design design = standard("gusseted-bag").design;
    design.parameters.set("hole", Length::mm(hole));
    double widest = 0;
    for (int seam = 8; seam < 60; ++seam) {
      design.parameters.set("seam", Length::mm(seam));
      const auto built = build(design);
      if (!built.ok()) continue;
      widest = seam;
      for (const Panel& panel : built->pieces[0].net.panels) {
        if (panel.openings.empty()) continue;
        ASSERT_EQ(panel.openings.size(), 2U);
        const Bounds one = bounds(panel.openings[0]);
        const Bounds other = bounds(panel.openings[1]);
        // The back rests on its side, and its holes lie one above the other.
        EXPECT_GE(std::max({other.low.x - one.high.x, one.low.x - other.high.x,
                            other.low.y - one.high.y, one.low.y - other.high.y}),
                  3 - 1e-9)
            << hole << ' ' << seam << ' ' << panel.id;
        if (panel.id != "front") continue;
        EXPECT_GE(std::min(one.low.x, other.low.x) - bounds(panel.outline).low.x, seam)
            << hole << ' ' << seam;
      }
    }
    EXPECT_GT(widest, 12) << hole;
  }
}

/// A soft phase box for an item of 101 x 76 x 7 mm is cut from 318 x 242 mm (University of
/// Brighton, soft phase-box sheet): a cross of base, walls and flaps, the flaps as large as the
/// base; the wrapper that goes over the other has walls half a millimetre deeper (from memory).
TEST(PhaseBox, HasTheBlankOfItsWorkedExample) {
  const double deep = 7;
  const double outer = 7.5;
  NetBuilder net({"inner", "outer"});
  Shape base = rectangle(101, 76);
  base.edges = {"front", "right", "back", "left"};
  net.root("base", base);
  for (const std::string side : {"front", "back"})
    net.hinge({"base", side}, side, rectangle(101, deep), {90, 1})
        .hinge({side, "outer"}, side + "/flap", rectangle(101, 76), {90, 1});
  for (const std::string side : {"left", "right"})
    net.hinge({"base", side}, side, rectangle(76, outer), {90, 2})
        .hinge({side, "outer"}, side + "/flap", rectangle(76, 101), {90, 2});
  const Net box = net.take();
  const FlatNet flat = flatten(box);
  EXPECT_NEAR(flat.width, 318, 1e-9);
  EXPECT_NEAR(flat.height, 242, 1e-9);
  const Pose folded = pose(box, 1);
  for (const std::string side : {"front", "back", "left", "right"}) {
    const auto flap = static_cast<std::size_t>(*box.find(side + "/flap"));
    const bool over = side == "left" || side == "right";
    for (const Point& p : box.panels[flap].outline) {
      const Point3 at = folded[flap].apply(p);
      EXPECT_NEAR(at.z, over ? outer : deep, 1e-9);
      EXPECT_TRUE(at.x > -1e-9 && at.x < 101 + 1e-9 && at.y > -1e-9 && at.y < 76 + 1e-9);
    }
  }
}

}  // namespace
}  // namespace creasewright
