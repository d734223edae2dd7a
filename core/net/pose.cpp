#include "net/pose.h"

#include <algorithm>
#include <cassert>

namespace creasewright {

Transform hingeFrame(const Segment& onParent) {
  const Point x = unit(onParent.a - onParent.b);
  const Point y = turnLeft(x);
  return Transform::frame({onParent.b.x, onParent.b.y, 0}, {x.x, x.y, 0}, {y.x, y.y, 0});
}

std::vector<Angle> foldAngles(const Net& net, double progress) {
  std::vector<Angle> angles;
  angles.reserve(net.creases.size());
  const double stages = std::max(1, net.stageCount());
  for (const Crease& crease : net.creases) {
    const double share = std::clamp(progress * stages - (crease.stage - 1), 0.0, 1.0);
    angles.push_back(crease.angle * share);
  }
  return angles;
}

Pose pose(const Net& net, const std::vector<Angle>& angles) {
  assert(angles.size() == net.creases.size());
  Pose placed(net.panels.size());
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    const Transform hinge = hingeFrame(crease.onParent).after(Transform::rotationX(angles[i]));
    placed[static_cast<std::size_t>(crease.child)] =
        placed[static_cast<std::size_t>(crease.parent)].after(hinge);
  }
  return placed;
}

Pose pose(const Net& net, double progress) { return pose(net, foldAngles(net, progress)); }

}  // namespace creasewright
