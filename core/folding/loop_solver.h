#pragma once

#include <array>
#include <vector>

#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// The loops of a net as equations: a loop crease is closed when either of its panels places its
/// two ends at the same points. Unknown are the angles of the tree creases that are not driven. The
/// net must outlive this.
class LoopSolver {
 public:
  explicit LoopSolver(const Net& net);

  [[nodiscard]] bool hasLoops() const { return !loops_.empty(); }

  /// Turns the unknown angles until all loops close, from the angles given (one per crease, loop
  /// creases ignored), by Levenberg-Marquardt; takes the nearest solution downhill. Returns what
  /// stays open, as gap() does.
  double close(std::vector<Angle>& angles) const;

  /// pose() of the net.
  [[nodiscard]] Pose pose(const std::vector<Angle>& angles) const { return posing_(angles); }
  /// The largest distance in mm between the two places of a loop crease's end.
  [[nodiscard]] double gap(const Pose& placed) const;
  /// Index into Net::creases of the loop with that distance; -1 without loops.
  [[nodiscard]] int widestLoop(const Pose& placed) const;
  /// Sets the angles of loop creases to what the placed panels show; a fold of 180 degrees has the
  /// declared sign.
  void measureLoops(const Pose& placed, std::vector<Angle>& angles) const;

 private:
  struct Loop {
    int crease;
    int parent;
    int child;
    std::array<Point3, 2> onParent;
    std::array<Point3, 2> onChild;
    std::vector<double> turns;  // by unknown: 1 it turns the parent only, -1 the child only, else 0
  };
  struct System;  // normal equations of one step

  [[nodiscard]] double squaredGap(const Pose& placed) const;
  [[nodiscard]] System linearise(const Pose& placed) const;

  const Net& net_;
  Posing posing_;
  std::vector<int> unknowns_;  // creases
  std::vector<Loop> loops_;
};

}  // namespace creasewright
