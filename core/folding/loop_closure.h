#pragma once

#include <vector>

#include "base/problem.h"
#include "base/result.h"
#include "folding/loop_solver.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// The way a net takes from flat to folded. Driven creases follow foldAngles(); the angles of the
/// others are such that all loops stay closed, found step by step from the flat net, so that each
/// state is the nearest to the one before it and leads to the declared final angles. A crease that
/// is not driven names the stage in which it reaches its final angle; before that stage it moves
/// only as far as the loops ask. In a stage that Net::bends declares no closed state exists on the
/// way: there the angles run evenly between the closed states before and after it.
/// The net must outlive the path. Steps already found are kept.
class FoldPath {
 public:
  explicit FoldPath(const Net& net);

  /// One angle per crease at `progress` (0 flat, 1 folded with the declared angles). Every loop is
  /// closed to 0.01 mm outside bending stages. Error: LoopOpen.
  Result<std::vector<Angle>> angles(double progress);
  /// pose() of those angles.
  Result<Pose> pose(double progress);

 private:
  struct Step {
    std::vector<Angle> angles;
    double open = 0;  // mm
  };
  [[nodiscard]] bool bends(int stage) const;
  void followTo(std::size_t node);
  [[nodiscard]] Step stepTo(const Step& from, double start, double end, double stageEnd,
                            int halvings) const;
  [[nodiscard]] Step guess(const Step& from, double start, double end, double stageEnd) const;
  [[nodiscard]] Step bent(const Step& from, double start, double end) const;
  Result<std::vector<Angle>> checked(const Step& step, double progress) const;

  const Net& net_;
  LoopSolver solver_;
  std::vector<Step> nodes_;  // kStepsPerStage a stage
};

/// FoldPath::pose, for one picture: whoever draws a net on its way calls this instead of
/// pose(net, progress). When a loop cannot close it shows the panels where the tree of creases puts
/// them; FoldPath tells that as a problem. Costs nothing extra for a net without loops.
Pose foldedPose(const Net& net, double progress);

/// Checks the folded end state: every loop crease, with its declared angle, puts its child where
/// the tree of creases does, to 0.01 mm at each corner. `folded` is pose(net, 1).
/// Problems: LoopOpen.
Problems checkLoops(const Net& net, const Pose& folded);

}  // namespace creasewright
