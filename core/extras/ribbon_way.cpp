#include "extras/ribbon_way.h"

#include <algorithm>

#include "folding/surfaces/scene.h"
#include "folding/surfaces/upright.h"
#include "units/millimetres.h"

namespace creasewright {

// Along the convex outline of all that it goes over, as a taut ribbon lies (geometry). Crosswise
// that is 2L + 2W + 4H round a bare box: two ribbon sellers' worked examples, 11.5 x 5.5 x 4 in
// give 50 in without a bow, 30 x 20 x 10 cm with a bow of 24 cm give 164 cm. Once round by the same
// geometry.
double ribbonRound(const std::vector<RibbonWay>& ways) {
  double round = 0;
  for (const RibbonWay& way : ways)
    for (std::size_t i = 0; i < way.outline.size(); ++i)
      round += distance(way.outline[i], way.outline[(i + 1) % way.outline.size()]);
  return round;
}

double reachOf(const RibbonWay& way, std::size_t side, double sign) {
  double reach = 0;
  for (const Point& p : way.outline)
    reach = std::max(reach, sign * (side == (way.axis + 1) % 3 ? p.x : p.y));
  return reach;
}

Transform crossingOf(const RibbonNeed& ribbon) {
  constexpr double kAbove = 1.6;  // mm over the strips
  const OutsideBox& box = ribbon.round;
  // What goes round level crosses in front; a way over the top, on it.
  const bool level = ribbon.ways.size() == 1 && ribbon.ways.front().axis == 2;
  const std::size_t side = level ? 1 : 2;
  const double sign = dot(box.axes[2], box.up) < 0 ? -1 : 1;
  const Point3 out = box.axes.at(side) * (level ? -1 : sign);
  double high = 0;
  for (const RibbonWay& way : ribbon.ways)
    if (way.axis != side) high = std::max(high, reachOf(way, side, level ? -1 : sign));
  Point3 x = box.axes[0];
  // The tails of a bow hang towards the one who looks at it.
  const Point3 eye = camera(frontView(standardView(), box.up), box.up).towardsEye;
  if (dot(cross(out * -1, x), eye) > 0) x = x * -1;
  return Transform::frame(box.centre + out * (high + kAbove), x, cross(out * -1, x));
}

ToolGrid ribbonSteps(ToolGrid grid) {
  const bool inches = !grid.isNone() && Length::inches(1).nm() % grid.step().nm() == 0;
  return ToolGrid(inches ? Length::inches(1, 2) : mm(10));
}

}  // namespace creasewright
