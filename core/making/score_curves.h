#pragma once

#include <vector>

#include "making/score_plan.h"

namespace creasewright {

/// Scores that no side guides, as the hand draws them.
struct DrawnScores {
  std::vector<std::vector<FreeScore>> curves;  ///< in pieces, three or more
  std::vector<FreeScore> straight;

  [[nodiscard]] int count() const { return static_cast<int>(curves.size() + straight.size()); }
};

DrawnScores drawnScores(const std::vector<FreeScore>& scores);

}  // namespace creasewright
