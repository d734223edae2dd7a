#include "net/pose.h"

#include <algorithm>
#include <cassert>

namespace creasewright {

Transform hingeFrame(const Segment& onParent) {
  const Point x = unit(onParent.a - onParent.b);
  const Point y = turnLeft(x);
  return Transform::frame({onParent.b.x, onParent.b.y, 0}, {x.x, x.y, 0}, {y.x, y.y, 0});
}

Angle angleAfter(const Crease& crease, double stages) {
  Waypoint from{crease.stage - 1.0, Angle()};
  Waypoint to{static_cast<double>(crease.stage), crease.angle};
  for (const Waypoint& point : crease.way) {
    if (point.after > stages) {
      to = point;
      break;
    }
    from = point;
  }
  if (to.after <= from.after) return to.angle;
  const double share = std::clamp((stages - from.after) / (to.after - from.after), 0.0, 1.0);
  return Angle::degrees(from.angle.degrees() * (1 - share) + to.angle.degrees() * share);
}

std::vector<Angle> foldAngles(const Net& net, double progress) {
  std::vector<Angle> angles;
  angles.reserve(net.creases.size());
  const double stages = progress * std::max(1, net.stageCount());
  for (const Crease& crease : net.creases) angles.push_back(angleAfter(crease, stages));
  return angles;
}

Posing::Posing(const Net& net) : panels_(net.panels.size()), creases_(net.creases.size()) {
  for (std::size_t i = 0; i < creases_; ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    hinges_.push_back({i, static_cast<std::size_t>(crease.parent),
                       static_cast<std::size_t>(crease.child), hingeFrame(crease.onParent)});
  }
}

Pose Posing::operator()(const std::vector<Angle>& angles) const {
  assert(angles.size() == creases_);
  Pose placed(panels_);
  for (const Hinge& hinge : hinges_)
    placed[hinge.child] =
        placed[hinge.parent].after(hinge.frame.turnedAboutX(angles[hinge.crease]));
  return placed;
}

Pose pose(const Net& net, const std::vector<Angle>& angles) { return Posing(net)(angles); }

Pose pose(const Net& net, double progress) { return pose(net, foldAngles(net, progress)); }

}  // namespace creasewright
