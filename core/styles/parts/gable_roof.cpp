#include "styles/parts/gable_roof.h"

#include <cmath>
#include <numbers>
#include <string>

#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

double degrees(double radians) { return radians * 180 / std::numbers::pi; }

/// Right triangles between gable and roof, standing on the gable's edge. The one on the right of a
/// gable lies beside its right edge.
Shape cornerTriangle(const GableRoof& roof, bool onTheRight) {
  const double half = roof.width / 2;
  const Shape right{{{half, roof.slant}, {2 * half, 0}, {2 * half, roof.slant}},
                    {"diagonal", "upright", "ridge"}};
  const Shape left{{{0, 0}, {half, roof.slant}, {0, roof.slant}}, {"diagonal", "ridge", "upright"}};
  return restedOn(onTheRight ? right : left, "diagonal");
}

void addGable(NetBuilder& net, const GableRoof& roof, const std::string& side,
              const std::string& beforeSide, const std::string& afterSide, int stage) {
  const std::string gable = side + "/" + side + "-gable";
  net.hinge({side, "top"}, gable,
            {{{0, 0}, {roof.width, 0}, {roof.width / 2, roof.slant}}, {"inner", "right", "left"}},
            {90 - roof.slope(), stage, CreaseKind::Score, false});
  const HingeFold fold{-roof.diagonalFold(), stage, CreaseKind::Score, false};
  net.hinge({gable, "left"}, gable + '/' + beforeSide + "-corner", cornerTriangle(roof, false),
            fold)
      .hinge({gable, "right"}, gable + '/' + afterSide + "-corner", cornerTriangle(roof, true),
             fold);
}

}  // namespace

double GableRoof::slope() const { return degrees(std::acos(width / (2 * slant))); }

double GableRoof::diagonalFold() const {
  const double c = width / (2 * slant);
  return degrees(std::acos(-c * c));
}

double GableRoof::rise() const { return std::sqrt(slant * slant - width * width / 4); }

void addGableRoof(NetBuilder& net, const FourWalls& walls, const GableRoof& roof, int stage) {
  const Shape panel = uprightWall(walls.length, roof.slant);
  net.hinge({"front", "top"}, "front/roof", panel, {90 - roof.slope(), stage})
      .hinge({"back", "top"}, "back/roof", panel, {90 - roof.slope(), stage});
  addGable(net, roof, "right", "front", "back", stage);
  addGable(net, roof, "left", "back", "front", stage);
  net.loop({"front/roof", "right"}, "right/right-gable/front-corner", {180, stage})
      .loop({"back/roof", "left"}, "right/right-gable/back-corner", {180, stage})
      .loop({"back/roof", "right"}, "left/left-gable/back-corner", {180, stage})
      .mate("left/left-gable/front-corner", "front/roof", Face::Inside, Method::Rest, false)
      .showing({"front/roof", "back/roof", "left/left-gable", "right/right-gable"});
}

}  // namespace creasewright
