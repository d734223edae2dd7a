#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

#include "document/build.h"

namespace creasewright {
namespace {

double radians(double degrees) { return degrees * std::numbers::pi / 180; }
double degrees(double radians) { return radians * 180 / std::numbers::pi; }

// A pillow box whose end scores are arcs of `radius` on a flat width of `width`. The width when
// folded is radius times the integral of sqrt(cos 2 phi) over the arc, sin(phi0) = width / (2
// radius), and the fold at the score theta = 2 atan(...) as tabled. Derived from the mirror image
// of a bent sheet at planes sloping by 45 degrees; the curvature of a curved crease agrees with
// Fuchs & Tabachnikov, "More on paperfolding", Amer. Math. Monthly 106 (1999), quoted from memory.
struct Pillow {
  double width, radius, length, phi0, sagitta, folded, edgeSlope;
};
const Pillow kPillows[] = {{80, 80, 120, 30, 10.71797, 75.84203, 35.2644},
                           {100, 120, 150, 24.6243, 10.91288, 96.65500, 27.2806}};

BuiltDesign pillow(const Pillow& row) {
  Design design = *newDesign("pillow-box", std::nullopt, {"test", "", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::none());
  design.parameters.set("width", Length::mm(row.width));
  design.parameters.set("length", Length::mm(row.length));
  design.parameters.set("depth", Length::mm(2 * row.sagitta));
  design.parameters.set("seam", Length::mm(6));
  const auto built = build(design);
  EXPECT_TRUE(built.ok() && built->problems.empty());
  return *built;
}

Point3 corner(const BuiltDesign& built, const std::string& panel, std::size_t index) {
  const BuiltPiece& piece = built.pieces[0];
  const auto i = static_cast<std::size_t>(*piece.net.find(panel));
  return piece.folded[i].apply(piece.net.panels[i].outline[index]);
}

/// The table's own values, integrated again.
TEST(PillowBox, TheClosedFormulaGivesTheTable) {
  for (const Pillow& row : kPillows) {
    EXPECT_NEAR(degrees(std::asin(row.width / 2 / row.radius)), row.phi0, 1e-4);
    EXPECT_NEAR(row.radius * (1 - std::cos(radians(row.phi0))), row.sagitta, 1e-4);
    EXPECT_NEAR(degrees(std::asin(std::tan(radians(row.phi0)))), row.edgeSlope, 1e-3);
    double sum = 0;
    constexpr int kSteps = 20000;
    for (int i = 0; i < kSteps; ++i) {
      const double phi = radians(row.phi0) * (2 * (i + 0.5) / kSteps - 1);
      sum += std::sqrt(std::cos(2 * phi)) * 2 * radians(row.phi0) / kSteps;
    }
    EXPECT_NEAR(row.radius * sum, row.folded, 1e-4);
  }
}

/// Eleven flat strips lie inside the bent card by as much as their chords lie inside the arc.
TEST(PillowBox, FoldsToTheBulgeAndWidthOfTheClosedFormula) {
  for (const Pillow& row : kPillows) {
    const BuiltDesign built = pillow(row);
    const BuiltPiece& piece = built.pieces[0];
    Point3 low{1e9, 1e9, 1e9};
    Point3 high{-1e9, -1e9, -1e9};
    for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
      const std::string& id = piece.net.panels[i].id;
      if (id.find('/') != std::string::npos) continue;
      for (const Point& p : piece.net.panels[i].outline) {
        const Point3 at = piece.folded[i].apply(p);
        low = {std::min(low.x, at.x), std::min(low.y, at.y), std::min(low.z, at.z)};
        high = {std::max(high.x, at.x), std::max(high.y, at.y), std::max(high.z, at.z)};
      }
    }
    const double strip = row.width / 11;
    const double chord = strip * strip / (8 * row.radius);
    EXPECT_NEAR(high.x - low.x, row.folded, 0.1);
    EXPECT_LE(high.z - low.z, 2 * row.sagitta + 1e-6);
    EXPECT_GE(high.z - low.z, 2 * (row.sagitta - 2 * chord));
    EXPECT_NEAR(high.y - low.y, row.length, 1e-6);
  }
}

/// 90 degrees in the middle, more towards the ends.
TEST(PillowBox, FoldsAtItsScoreAsTabled) {
  const BuiltDesign built = pillow(kPillows[0]);
  const Net& net = built.pieces[0].net;
  const auto fold = [&](int strip) {
    const std::string name = "front/near-flap" + (strip == 6 ? "" : '#' + std::to_string(strip));
    return net.creaseOf(*net.find(name))->angle.degrees();
  };
  EXPECT_NEAR(fold(6), 90, 1e-9);
  // The table: 93.8226 at a quarter of the width from the middle, 100.9806 at four tenths. The
  // strips' middles lie there to a few millimetres.
  EXPECT_GT(fold(4), 90.5);
  EXPECT_LT(fold(4), 93.8226);
  EXPECT_GT(fold(2), 93.8226);
  EXPECT_LT(fold(2), 100.9806);
  EXPECT_GT(fold(1), 100.9806);
  EXPECT_NEAR(fold(3), fold(9), 1e-9);
}

/// The two end flaps of a side lie on one another: their strips share the upright rulings.
TEST(PillowBox, EndFlapsOfFrontAndBackCoincide) {
  const BuiltDesign built = pillow(kPillows[0]);
  const Point3 a = corner(built, "front/near-flap", 0);
  const Point3 b = corner(built, "back/near-flap", 0);
  const Point3 normal =
      built.pieces[0]
          .folded[static_cast<std::size_t>(*built.pieces[0].net.find("front/near-flap"))]
          .normal();
  EXPECT_NEAR(dot(b - a, normal), 0, 1e-6);
}

}  // namespace
}  // namespace creasewright
