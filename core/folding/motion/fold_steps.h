#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "folding/loop_closure.h"
#include "folding/panel_shape.h"

namespace creasewright {

/// A small rigid motion: it moves the point p by turn x p + shift, to first order.
struct Twist {
  Point3 turn;
  Point3 shift;

  [[nodiscard]] Point3 at(Point3 p) const { return cross(turn, p) + shift; }
  friend Twist operator-(const Twist& a, const Twist& b) {
    return {a.turn - b.turn, a.shift - b.shift};
  }
};

/// The net between two moments of one stage, seen from the moment half way.
struct FoldStep {
  double from = 0;  ///< progress
  double to = 0;
  const std::vector<Angle>* start = nullptr;  ///< by crease; those of the whole that it is half of
  const std::vector<Angle>* end = nullptr;
  std::vector<Angle> middle;
  Pose pose;                   ///< half way
  std::vector<Twist> twists;   ///< by panel: from half way to the end, with the root at rest
  std::vector<double> turns;   ///< by crease: most radians it turns in half the step
  std::vector<double> uneven;  ///< by crease: radians it strays from an even turn
  std::vector<std::optional<PlacedShape>> placed;  ///< the shapes asked for, half way
  std::unique_ptr<FoldStep> firstHalf;
  std::unique_ptr<FoldStep> secondHalf;

  /// `shapes[index]` where it is half way.
  const PlacedShape& place(const std::vector<ConvexShape>& shapes, std::size_t index);
};

/// The way of a net from flat to folded as a tree of steps, halved where somebody asks for it.
/// The net must outlive this.
class FoldSteps {
 public:
  explicit FoldSteps(const Net& net) : net_(net), path_(net) {}

  /// The whole of a stage (1..stageCount). Nothing when a loop does not close on it; then problem()
  /// says which.
  FoldStep* stage(int stage);
  /// The net at the end of the stage asked for last.
  [[nodiscard]] const Moment& stageEnd() const { return stageEnd_; }
  /// The halves of a step; false when a loop does not close.
  bool halve(FoldStep& step);
  /// The net at `progress`.
  std::optional<Moment> at(double progress);
  [[nodiscard]] const std::optional<Problem>& problem() const { return problem_; }

 private:
  std::unique_ptr<FoldStep> step(double from, double to, const std::vector<Angle>& start,
                                 const std::vector<Angle>& end);

  const Net& net_;
  FoldPath path_;
  std::unique_ptr<FoldStep> stage_;
  Moment stageStart_;
  Moment stageEnd_;
  std::optional<Problem> problem_;
};

}  // namespace creasewright
