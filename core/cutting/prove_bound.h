#pragma once

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// What no plan costs less than, found anew from a proof, at most `cost`. Shares no code with the
/// search and believes none of its numbers: what a sheet holds at most is found by a plain
/// programme over all sums of sides (Herz, IBM J. Res. Dev. 16, 1972) and, where that is not
/// enough, by a list of all that fits a sheet; then all numbers of sheets of each kind are tried
/// that cost less. Where all patterns that so many sheets may be cut by are listed, the steps of a
/// proof are walked (count_steps.h), or every choice of patterns is tried. What cannot be found
/// with the work at hand is left out: the bound is then lower, and the plan is not called proven.
std::int64_t recomputeBound(const std::vector<CutSheet>& stock,
                            const std::vector<BlankDemand>& demands, bool priced,
                            const BoundProof& proof, std::int64_t cost, Work& work);

}  // namespace creasewright
