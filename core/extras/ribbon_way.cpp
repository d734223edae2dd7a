#include "extras/ribbon_way.h"

#include <algorithm>

#include "folding/surfaces/scene.h"
#include "folding/surfaces/upright.h"
#include "units/millimetres.h"

namespace creasewright {

// Crosswise 2L + 2W + 4H round a bare box: two ribbon sellers' worked examples, 11.5 x 5.5 x 4 in
// give 50 in without a bow, 30 x 20 x 10 cm with a bow of 24 cm give 164 cm. Once round by the same
// geometry.
double ribbonRound(const std::vector<RibbonWay>& ways) {
  double round = 0;
  for (const RibbonWay& way : ways)
    for (const double size : way.sizes) round += 2 * size;
  return round;
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
  for (const RibbonWay& way : ribbon.ways) high = std::max(high, way.sizes.at(side));
  Point3 x = box.axes[0];
  // The tails of a bow hang towards the one who looks at it.
  const Point3 eye = camera(frontView(standardView(), box.up), box.up).towardsEye;
  if (dot(cross(out * -1, x), eye) > 0) x = x * -1;
  return Transform::frame(box.centre + out * (high / 2 + kAbove), x, cross(out * -1, x));
}

ToolGrid ribbonSteps(ToolGrid grid) {
  const bool inches = !grid.isNone() && Length::inches(1).nm() % grid.step().nm() == 0;
  return ToolGrid(inches ? Length::inches(1, 2) : mm(10));
}

}  // namespace creasewright
