#pragma once

#include "cutting/cutting.h"

namespace creasewright {

/// The two parts of a rectangle cut at `at` from its left or lower edge.
CutNode cutAt(const CutNode& frame, bool upright, Length at);

/// A blank in the lower left of a rectangle, trimmed out by one or two cuts.
CutNode blankIn(const CutNode& frame, Length width, Length height, int item, bool turned);

/// Every length times `unit`.
void scale(CutNode& node, std::int64_t unit);

/// Blanks beyond `most` of their demand become offcuts; `most` is used up.
void limit(CutNode& node, std::vector<int>& most);

/// The parts that a rectangle is cut into by cuts of one direction, from left to right or from
/// below; the rectangle itself when it is not cut.
std::vector<const CutNode*> partsAlong(const CutNode& node);

/// Whether two parts are cut alike into the same blanks, wherever they lie.
bool cutAlike(const CutNode& a, const CutNode& b);

/// The same blanks from the same rectangle in an order a person cuts with less work: along every
/// direction parts that are cut alike lie side by side, the widest first, and what is left over is
/// one offcut at the end.
CutNode tidied(const CutNode& node);

}  // namespace creasewright
