#include "styles/parts/frustum.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

double radians(double degrees) { return degrees * std::numbers::pi / 180; }

/// A tab whose ends taper by `angle` degrees.
Shape taperedTab(double edge, double depth, double angle) {
  const double inset = depth / std::tan(radians(angle));
  return trapezoid(edge, depth, inset, inset);
}

}  // namespace

double Frustum::lean() const { return apothemOf(sides, bottom) - apothemOf(sides, top); }
double Frustum::slope() const { return toDegrees(std::atan2(height, lean())); }
double Frustum::slant() const { return std::hypot(height, lean()); }
double Frustum::ridge() const { return std::hypot(slant(), (bottom - top) / 2); }

double Frustum::seamFold() const {
  return toDegrees(2 * std::asin(std::sin(radians(slope())) * std::sin(std::numbers::pi / sides)));
}

double Frustum::fanAngle() const { return toDegrees(2 * std::atan2((top - bottom) / 2, slant())); }

double Frustum::tabTaper() const {
  constexpr double kPlay = 2;
  const double halfCorner = 90 - 180.0 / sides;
  const double besideBase = 360.0 / sides - std::max(0.0, fanAngle());
  return std::min({45.0, halfCorner - kPlay, besideBase - kPlay});
}

double Frustum::deepestTab() const { return 0.4 * bottom * std::tan(radians(tabTaper())); }

std::string wallName(int number) { return "wall-" + std::to_string(number); }

Shape frustumWall(const Frustum& f) {
  const double inset = (f.bottom - f.top) / 2;
  return {{{0, 0}, {f.bottom, 0}, {f.bottom - inset, f.slant()}, {inset, f.slant()}},
          {"bottom", "right", "top", "left"}};
}

void addFrustumWalls(NetBuilder& net, const Frustum& f, int stage) {
  const Shape wall = frustumWall(f);
  const Shape next = restedOn(wall, "left");
  net.root(wallName(1), wall);
  for (int k = 2; k <= f.sides; ++k)
    net.hinge({wallName(k - 1), "right"}, wallName(k), next,
              {f.seamFold(), k == 2 ? stage : stage - 1});
  // Beyond 10 degrees as much as the first wall's own edge leans.
  const double slope = std::tan(radians(10)) + std::abs(f.top - f.bottom) / 2 / f.slant();
  const double atEnds = std::min(f.seam * slope + 1, f.ridge() * 0.4);
  net.hinge({wallName(f.sides), "right"}, "seam", trapezoid(f.ridge(), f.seam, atEnds, atEnds),
            {f.seamFold(), stage - 1})
      .mate("seam", wallName(1), Face::Inside, Method::Glue, true);
  for (int k = 1; k <= f.sides; ++k) net.showing({wallName(k)});
}

void addFrustumBase(NetBuilder& net, const Frustum& f, int tabStage, int baseStage) {
  const double fold = 180 - f.slope();
  for (int k = 2; k <= f.sides; ++k)
    net.hinge({wallName(k), "bottom"}, wallName(k) + "/tab",
              taperedTab(f.bottom, f.tab, f.tabTaper()), {fold, tabStage});
  net.hinge({wallName(1), "bottom"}, "base", regularPolygon(f.sides, f.bottom), {fold, baseStage});
  for (int k = 2; k <= f.sides; ++k)
    net.mate(wallName(k) + "/tab", "base", Face::Inside, Method::Glue, true);
  net.showing({"base"});
}

Cavity insideOf(const Frustum& f) {
  Cavity cavity{"base", {f.bottom / 2, apothemOf(f.sides, f.bottom), f.height / 2}};
  cavity.high.z = f.height;
  return cavity;
}

}  // namespace creasewright
