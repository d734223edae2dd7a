#include "pages/pull_picture.h"

#include <algorithm>

#include "extras/pull_shape.h"
#include "extras/ribbon_strips.h"

namespace creasewright {
namespace {

constexpr double kOff = 0.3;  // mm from the card to what lies on it

/// How far it is gathered at so much of its way: as narrow as the hole there, soon as wide as it
/// is.
double widthAt(const RibbonNeed& ribbon, double share) {
  constexpr double kGathered = 0.2;  // of the loop at either end
  const double width = ribbon.width.mm();
  const double most = std::min(width, ribbon.pull->hole);
  const double part = std::min({1.0, share / kGathered, (1 - share) / kGathered});
  return most + (width - most) * part;
}

}  // namespace

void addPull(const RibbonNeed& ribbon, const Panel& panel, const Transform& placed, double share,
             Net& net, Pose& pose) {
  RibbonPull pull = *ribbon.pull;
  pull.reach *= share;
  const Polyline loop = pullLoop(pull);
  RibbonLine line;
  line.smooth = true;
  line.across = placed.turn({0, 1, 0});
  for (std::size_t i = 0; i < loop.size(); ++i) {
    line.points.push_back(placed.apply(Point3{loop[i].x, 0, -pull.caliper / 2 - loop[i].y}));
    line.halves.push_back(
        widthAt(ribbon, static_cast<double>(i) / static_cast<double>(loop.size() - 1)) / 2);
  }
  addRibbonLine(line, net, pose);
  const Transform inside = Transform::translation({0, 0, pull.caliper / 2 + kOff});
  double off = 0;
  for (Polygon& shape : pullEnds(ribbon, panel)) {
    addRibbonPanel(std::move(shape),
                   placed.after(Transform::translation({0, 0, off})).after(inside), net, pose);
    off += 0.05;
  }
}

}  // namespace creasewright
