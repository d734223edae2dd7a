#pragma once

#include "folding/motion/fold_steps.h"
#include "folding/motion/joined_edges.h"
#include "folding/motion/pair_watch.h"

namespace creasewright {

/// Watches one part of a flap that lies in the plane of its target, on a known face of it. A panel
/// that slides in another's plane cuts nothing that only stands on the rim of that plane, though
/// no card could get there: this finds it sticking out over an edge whose neighbour is turned up on
/// its face, as a tab would that swings into a rolled wall through the fold along its top.
class EdgeWatch {
 public:
  /// `part` indexes the shapes; `side` is 1 for the target's drawn face, -1 for the other.
  EdgeWatch(const Net& net, const JoinedEdge& edge, std::size_t part, int side)
      : net_(&net), edge_(edge), part_(part), side_(side) {}

  using Context = PairWatch::Context;

  [[nodiscard]] const JoinedEdge& edge() const { return edge_; }
  /// Whether it sticks out over the turned edge at any moment of the step. `motion` is that of the
  /// flap (a) against its target (b). A loop that cannot be followed ends the step as if nothing
  /// happened.
  [[nodiscard]] bool crosses(const Context& context, const PairMotion& motion,
                             FoldStep& step) const;
  /// Whether it does in one pose.
  [[nodiscard]] bool crossesAt(const Context& context, const Pose& pose,
                               const std::vector<Angle>& angles) const;

 private:
  [[nodiscard]] double wayToCrossing(const Context& context, const Pose& pose) const;
  [[nodiscard]] bool staysDown(const FoldStep& step) const;
  [[nodiscard]] bool turnedUp(const Pose& pose, const std::vector<Angle>& angles) const;

  const Net* net_;
  JoinedEdge edge_;
  std::size_t part_;
  int side_;
};

}  // namespace creasewright
