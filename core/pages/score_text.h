#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "making/score_hand.h"

namespace creasewright {

/// A heading (`All four sides:`) with its sentences, and the lines that each sentence speaks of
/// (blank coordinates, mm).
struct ScoreSection {
  Label heading;  ///< empty label (no code, no literal) for free scores
  std::vector<Label> lines;
  std::vector<std::vector<Segment>> places = {};
};

/// Names every side of a setup (`Both short sides:`), for a blank of `width` x `height` mm.
Label sidesHeading(std::vector<SheetSide> sides, double width, double height);

/// The score plan as sentences to read at the board; equal short scores are put together. `width`
/// and `height` of the blank tell short sides from long ones. The left hand counts end points from
/// the lower right corner.
std::vector<ScoreSection> scoreText(const ScorePlan& plan, double width, double height,
                                    Hand hand = Hand::Right);

}  // namespace creasewright
