#pragma once

#include <vector>

#include "making/score_plan.h"

namespace creasewright {

/// Where a score meets the side that a strip is laid along.
struct StripTick {
  double at = 0;  ///< mm from the strip's left end
  ScoreReading reading;
  bool fromRight = false;  ///< the reading counts from the strip's right end
};

/// A ruler to lay along a side of a sheet that lies inside up with this side to the maker.
struct ScoreStrip {
  std::vector<SheetSide> sides;  ///< all that it serves
  double length = 0;             ///< mm, of the side
  std::vector<StripTick> ticks;  ///< from left to right
};

/// The strips of a blank of `width` x `height` mm: one for all sides that are alike. Sides that no
/// score meets have none; nor do scores that are parallel to no side (ScorePlan::freeScores).
std::vector<ScoreStrip> scoreStrips(const ScorePlan& plan, double width, double height);

/// Places where a strip is cut so that no part is longer than `longest` mm: away from its ticks
/// where that is possible.
std::vector<double> stripJoints(const ScoreStrip& strip, double longest);

}  // namespace creasewright
