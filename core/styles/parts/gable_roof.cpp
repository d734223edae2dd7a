#include "styles/parts/gable_roof.h"

#include <algorithm>
#include <cmath>
#include <string>

#include "net/net_problems.h"
#include "styles/parts/regular_polygon.h"

namespace creasewright {
namespace {

/// The corner on the right of a gable, where it lies beside it.
Shape rightTriangle(const GableRoof& roof) {
  const double half = roof.width / 2;
  return {{{half, roof.slant}, {2 * half, 0}, {2 * half, roof.slant}},
          {"diagonal", "upright", "ridge"}};
}

/// Right triangles between gable and roof, standing on the gable's edge. The one on the right of a
/// gable lies beside its right edge.
Shape cornerTriangle(const GableRoof& roof, bool onTheRight) {
  const double half = roof.width / 2;
  const Shape left{{{0, 0}, {half, roof.slant}, {0, roof.slant}}, {"diagonal", "ridge", "upright"}};
  return restedOn(onTheRight ? rightTriangle(roof) : left, "diagonal");
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

/// Where the corner lies on the roof's seam, in the corner's frame.
Polygon onRoofSeam(const GableRoof& roof, double seam) {
  Shape corner = rightTriangle(roof);
  const double edge = roof.width;
  const double in = edge - std::min(seam, roof.width / 6);
  corner.openings = {{{in, roof.slant / 2},
                      {edge, roof.slant / 2},
                      {edge, roof.slant * 3 / 4},
                      {in, roof.slant * 3 / 4}}};
  return restedOn(corner, "diagonal").openings.front();
}

/// The seam goes on up the roof: a flap on the corner beside the sheet's end, folded flat onto it
/// before the walls close, so that it comes to lie between corner and roof. It ends clear of the
/// wall's seam below.
void addRoofSeam(NetBuilder& net, const GableRoof& roof, const GableFold& fold) {
  const std::string corner = "left/left-gable/front-corner";
  const double taper = std::min(fold.seam * std::tan(Angle::degrees(15).radians()), roof.slant / 4);
  net.hinge({corner, "upright"}, corner + "/roof-seam",
            trapezoid(roof.slant, fold.seam, taper, taper), {180, fold.seamStage})
      .mate(corner + "/roof-seam", "front/roof", Face::Inside, Method::Glue, true)
      .mate(corner, "front/roof", Face::Inside, Method::Rest, false)
      .mate(corner, corner + "/roof-seam", Face::Inside, Method::Rest, false,
            onRoofSeam(roof, fold.seam));
}

}  // namespace

double GableRoof::slope() const { return toDegrees(std::acos(width / (2 * slant))); }

double GableRoof::diagonalFold() const {
  const double c = width / (2 * slant);
  return toDegrees(std::acos(-c * c));
}

double GableRoof::rise() const { return std::sqrt(slant * slant - width * width / 4); }

double roofSeam(const FourWalls& walls, double caliper) {
  return std::min(walls.seam, std::max(walls.width / 2, minimumFlapWidth(caliper)));
}

void addGableRoof(NetBuilder& net, const FourWalls& walls, const GableRoof& roof,
                  const GableFold& fold) {
  const int stage = fold.roofStage;
  const Shape panel = uprightWall(walls.length, roof.slant);
  net.hinge({"front", "top"}, "front/roof", panel, {90 - roof.slope(), stage})
      .hinge({"back", "top"}, "back/roof", panel, {90 - roof.slope(), stage});
  addGable(net, roof, "right", "front", "back", stage);
  addGable(net, roof, "left", "back", "front", stage);
  net.loop({"front/roof", "right"}, "right/right-gable/front-corner", {180, stage})
      .loop({"back/roof", "left"}, "right/right-gable/back-corner", {180, stage})
      .loop({"back/roof", "right"}, "left/left-gable/back-corner", {180, stage})
      .showing({"front/roof", "back/roof", "left/left-gable", "right/right-gable"});
  addRoofSeam(net, roof, fold);
}

NetWords gableWords() {
  return {
      .stages = {{"roof", worded("stages", "fold in the sides and close the roof"),
                  worded(
                      "stages",
                      "Push both sides of the roof inwards while front and back come together.")}},
      .panels = {{"back-corner", worded("panels", "back corner")},
                 {"front-corner", worded("panels", "front corner")},
                 {"roof-seam", worded("panels", "roof seam")},
                 {"left-gable", worded("panels", "left gable")},
                 {"right-gable", worded("panels", "right gable")}}};
}

}  // namespace creasewright
