#pragma once

#include <vector>

#include "making/score_plan.h"

namespace creasewright {

/// Lines as the hand draws and folds them.
struct HandLines {
  std::vector<Polyline> curves;  ///< blank coordinates
  std::vector<Segment> straight;

  [[nodiscard]] int count() const { return static_cast<int>(curves.size() + straight.size()); }
};

/// Chains of three or more pieces, each of which goes on from the one before and turns a little to
/// the same side, are one curve.
HandLines handLines(const std::vector<Segment>& pieces);

HandLines handLines(const std::vector<FreeScore>& scores);

}  // namespace creasewright
