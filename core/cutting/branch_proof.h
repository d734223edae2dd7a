#pragma once

#include <optional>

#include "cutting/cover.h"
#include "cutting/cutting.h"

namespace creasewright {

/// What branching comes to.
struct Branched {
  std::vector<int> times;                       ///< by column: a cover; empty = none was found
  std::optional<std::vector<CountStep>> proof;  ///< that there is none
};

/// Covers by columns of which no more than `rows.atHand` of each kind may be taken: branches on how
/// often a column is taken, depth first, by a linear programme of what is short (of blanks, by
/// their `areas`). Each end is an end in whole numbers (CountStep), so that a proof needs no belief
/// in a linear programme. Neither where it would take more steps, or the work was given up.
Branched branchOnColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         const std::vector<double>& areas, std::size_t mostSteps, Work& work);

/// Looks for such a cover alone, by a few dives: each from another corner of the linear programme,
/// upwards first, and for a few steps. Empty when none was found.
std::vector<int> diveOnColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                               const std::vector<double>& areas, Work& work);

}  // namespace creasewright
