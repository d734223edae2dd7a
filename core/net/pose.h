#pragma once

#include <vector>

#include "geometry/transform.h"
#include "net/net.h"

namespace creasewright {

/// One placed panel frame per panel of the net, in the frame of panel 0.
using Pose = std::vector<Transform>;

/// Frame of a child along its crease, in the parent's frame, while flat: origin at q, x towards p,
/// y out of the parent.
Transform hingeFrame(const Segment& onParent);

/// Angle of a crease when `stages` stages are done, 1.5 being half way through the second.
Angle angleAfter(const Crease& crease, double stages);

/// Angle of each crease at `progress`: 0 is flat, 1 folded; in between the
/// stages follow one another, each taking an equal part.
std::vector<Angle> foldAngles(const Net& net, double progress);

/// Forward kinematics: places every panel for the given fold angles (one per crease). With all
/// angles zero this is the flat net.
Pose pose(const Net& net, const std::vector<Angle>& angles);

/// pose() of one net again and again: what no angle changes is found once.
class Posing {
 public:
  explicit Posing(const Net& net);
  [[nodiscard]] Pose operator()(const std::vector<Angle>& angles) const;

 private:
  struct Hinge {
    std::size_t crease;
    std::size_t parent;
    std::size_t child;
    Transform frame;
  };
  std::vector<Hinge> hinges_;  // of the tree, parents first
  std::size_t panels_;
  std::size_t creases_;
};

/// pose(net, foldAngles(net, progress)).
Pose pose(const Net& net, double progress);

}  // namespace creasewright
