#pragma once

#include <vector>

#include "folding/loop_closure.h"
#include "folding/surfaces/view.h"
#include "geometry/polygon.h"
#include "guide/guide.h"
#include "net/pose.h"

namespace creasewright {

/// Poses of a piece while a fold step is done; net and step must outlive them.
class StepPoses {
 public:
  StepPoses(const Net& net, const Step& step) : net_(net), step_(step), path_(net) {}

  /// At a progress of the whole piece, 0 flat, 1 folded.
  [[nodiscard]] Pose at(double progress);
  /// At a share of the step's whole way.
  [[nodiscard]] Pose atShare(double share);

 private:
  const Net& net_;
  const Step& step_;
  FoldPath path_;
};

/// The ways of the moving panels' middles to where they go, in picture coordinates: in the last
/// stage of the step, from about where they are shown; of earlier ones, as they hang on the panel
/// that is shown where it went since.
std::vector<Polyline> waysOf(const Net& net, const Step& step, double shown, StepPoses& poses,
                             const Camera& eye);

/// Whether a step closes the lowest side of what stands upright along `up`: what moves ends there,
/// and the largest of it lies level. Then the box is turned over, so that the flaps in hand are
/// seen.
bool closesBelow(const Net& net, const Step& step, const Pose& end, const Point3& up);

}  // namespace creasewright
