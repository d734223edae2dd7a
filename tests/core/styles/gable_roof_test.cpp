#include "styles/parts/gable_roof.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "document/build.h"
#include "folding/loop_closure.h"

namespace creasewright {
namespace {

struct Gable {
  double slant, slope, diagonalFold, diagonalAngle;
};

// For sides of 70 mm: derived by closing the loops of the four folds at a roof corner. The first
// two slopes are 45 and 60 degrees. Degrees and mm.
const Gable kGables[] = {{49.4975, 45, 120.0000, 54.7356},
                         {70, 60, 104.4775, 63.4349},
                         {45, 38.9424, 127.2244, 52.1250}};

TEST(GableRoof, HasTheAnglesOfItsClosedLoops) {
  for (const Gable& row : kGables) {
    const GableRoof roof{70, row.slant};
    EXPECT_NEAR(roof.slope(), row.slope, 1e-4);
    EXPECT_NEAR(roof.diagonalFold(), row.diagonalFold, 1e-4);
    const double angle = std::atan2(2 * roof.slant, roof.width) * 180 / std::numbers::pi;
    EXPECT_NEAR(angle, row.diagonalAngle, 1e-4);
    EXPECT_NEAR(roof.rise(), std::sin(row.slope * std::numbers::pi / 180) * row.slant, 1e-3);
  }
}

/// Folded, the apex of a side lies at the height of the ridge, half a width inwards.
TEST(GableRoof, FoldsTheApexUnderTheRidge) {
  const auto design = newDesign("gable-box", std::nullopt, {"test", "", Length::mm(0.3), 0},
                                Ease::Easy, ToolGrid::none());
  const auto built = build(*design);
  ASSERT_TRUE(built.ok());
  const Net& net = built->pieces[0].net;
  const double length = built->design.parameters.mm("length");
  const double width = built->design.parameters.mm("width");
  const double height = built->design.parameters.mm("height");
  const GableRoof roof{width, built->design.parameters.mm("roof")};
  const auto gable = static_cast<std::size_t>(*net.find("right/right-gable"));
  const Point3 apex = built->pieces[0].folded[gable].apply(Point{width / 2, roof.slant});
  EXPECT_NEAR(apex.x, length - width / 2, 1e-6);  // the front's frame: x along it, y up, z inwards
  EXPECT_NEAR(apex.y, height + roof.rise(), 1e-6);
  EXPECT_NEAR(apex.z, width / 2, 1e-6);
}

/// On the whole way the loops stay closed to 0.01 mm; FoldPath says where they do not.
TEST(GableRoof, LoopsStayClosedOnTheWay) {
  const auto design = newDesign("gable-box", std::nullopt, {"test", "", Length::mm(0.3), 0},
                                Ease::Easy, ToolGrid::none());
  const auto built = build(*design);
  ASSERT_TRUE(built.ok());
  FoldPath path(built->pieces[0].net);
  for (int i = 0; i <= 20; ++i) EXPECT_TRUE(path.pose(i / 20.0).ok()) << i;
}

/// The seam of the sheet used to end at the eave, and the corner above it was joined to nothing.
TEST(GableRoof, AllFourCornersOfTheRoofAreJoined) {
  for (const char* style : {"gable-box", "milk-carton-top-box"}) {
    const auto design = newDesign(style, std::nullopt, {"test", "", Length::mm(0.3), 0}, Ease::Easy,
                                  ToolGrid::none());
    const auto built = build(*design);
    ASSERT_TRUE(built.ok());
    const Net& net = built->pieces[0].net;
    const auto roofs = std::array{*net.find("front/roof"), *net.find("back/roof")};
    for (const char* corner : {"left/left-gable/front-corner", "left/left-gable/back-corner",
                               "right/right-gable/front-corner", "right/right-gable/back-corner"}) {
      const int panel = *net.find(corner);
      const bool creased = std::ranges::any_of(net.creases, [&](const Crease& crease) {
        return crease.child == panel && std::ranges::find(roofs, crease.parent) != roofs.end();
      });
      const bool glued = std::ranges::any_of(net.mates, [&](const Mate& mate) {
        const Crease* flap = net.creaseOf(mate.panel);
        return flap != nullptr && flap->parent == panel && mate.method == Method::Glue &&
               mate.rim && std::ranges::find(roofs, mate.onto) != roofs.end();
      });
      EXPECT_NE(creased, glued) << style << ' ' << corner;
    }
  }
}

/// The hook on one half is wider than its neck and than the slit in the other half, the neck goes
/// through, and the shoulder lies below the slit once the hook is folded over.
TEST(GableBox, TheHalvesOfTheHandleLock) {
  for (const double length : {70, 110, 260}) {
    const auto standard = newDesign("gable-box", std::nullopt, {"test", "", Length::mm(0.3), 0},
                                    Ease::Easy, ToolGrid::none());
    ASSERT_TRUE(standard.ok());
    Design design = *standard;
    design.parameters.set("length", Length::mm(length));
    const auto built = build(design);
    ASSERT_TRUE(built.ok());
    const BuiltPiece& box = built->pieces[0];
    const Net& net = box.net;
    const int hook = *net.find("front/roof/front-handle/hook");
    const int back = *net.find("back/roof/back-handle");
    ASSERT_EQ(net.slits.size(), 1u);
    ASSERT_EQ(net.slits[0].panel, back);
    const Polyline& slit = net.slits[0].line;
    const Transform seen = box.folded[static_cast<std::size_t>(back)].inverse().after(
        box.folded[static_cast<std::size_t>(hook)]);
    double neck[2] = {1e9, -1e9};
    double widest[2] = {1e9, -1e9};
    for (const Point& corner : net.panels[static_cast<std::size_t>(hook)].outline) {
      const Point3 p = seen.apply(corner);
      EXPECT_NEAR(p.z, 0, 1e-6);
      double* const range = p.y > slit[0].y + 1e-6 ? neck : widest;
      range[0] = std::min(range[0], p.x);
      range[1] = std::max(range[1], p.x);
    }
    const double from = std::min(slit[0].x, slit[1].x);
    const double to = std::max(slit[0].x, slit[1].x);
    EXPECT_LT(from, neck[0]);
    EXPECT_GT(to, neck[1]);
    EXPECT_GT(from, widest[0]);
    EXPECT_LT(to, widest[1]);
    EXPECT_TRUE(std::ranges::any_of(net.mates, [&](const Mate& mate) {
      return mate.panel == hook && mate.onto == back && mate.method == Method::Lock;
    }));
  }
}

/// A square carton with a flat roof and the largest fin: with one of half the width its two sides
/// went through one another on the way in (found by the soak).
TEST(GableRoof, TheLargestFinOfASquareCartonFoldsClear) {
  auto design = newDesign("milk-carton-top-box", std::nullopt, {"test", "", Length::mm(0.3), 0},
                          Ease::Easy, ToolGrid::none());
  for (const double roof : {0.55, 0.65, 1.0}) {
    Design square = *design;
    square.parameters.set("width", Length::mm(170));
    square.parameters.set("length", Length::mm(170));
    square.parameters.set("roof", Length::mm(170 * roof));
    square.parameters.set("fin", Length::mm(59.5));
    const auto built = build(square);
    ASSERT_TRUE(built.ok()) << built.problem().where;
    EXPECT_TRUE(everyProblem(*built).empty()) << roof;
    square.parameters.set("fin", Length::mm(59.6));
    EXPECT_FALSE(build(square).ok());
  }
}

}  // namespace
}  // namespace creasewright
