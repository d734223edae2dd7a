#pragma once

#include <vector>

#include "base/problem.h"
#include "base/result.h"
#include "folding/loop_solver.h"
#include "net/net.h"
#include "net/pose.h"

namespace creasewright {

/// A net at one moment of its way.
struct Moment {
  std::vector<Angle> angles;  ///< by crease
  Pose pose;
};

/// The way a net takes from flat to folded. Driven creases follow foldAngles(); the angles of the
/// others are such that all loops stay closed. They are found step by step backwards from the
/// declared final angles, each the nearest to the one after it: the flat net belongs to several
/// ways of folding, the folded one to its own only. A crease that is not driven names the stage in
/// which it reaches its final angle; before that it moves only as far as the loops ask.
/// In a stage that Net::bends declares no closed state exists on the way: there the angles that are
/// not driven run evenly between the closed states before and after it.
/// The net must outlive the path. Steps already found are kept.
class FoldPath {
 public:
  explicit FoldPath(const Net& net);

  /// The net at `progress` (0 flat, 1 folded with the declared angles). Every loop is closed to
  /// 0.01 mm outside bending stages. Error: LoopOpen.
  Result<Moment> at(double progress);
  Result<std::vector<Angle>> angles(double progress);
  Result<Pose> pose(double progress);

 private:
  using Angles = std::vector<Angle>;
  [[nodiscard]] double progressOf(int node) const;
  [[nodiscard]] bool bendsAfter(int node) const;
  void takeDriven(Angles& angles, double progress) const;
  void followBackTo(int node);
  [[nodiscard]] Angles stageStart(int stage) const;
  [[nodiscard]] Angles closed(const Angles& guess, double progress) const;
  [[nodiscard]] Angles stepBack(const Angles& from, const Angles& last, double start, double end,
                                int halvings) const;
  [[nodiscard]] Result<Moment> checked(Angles angles, double progress) const;
  [[nodiscard]] Moment evenly(double progress) const;

  const Net& net_;
  LoopSolver solver_;
  std::vector<Angles> nodes_;  // nodes_[i] is i steps before the end
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
