#pragma once

#include <vector>

#include "making/fold_plan.h"

namespace creasewright {

/// Folds as hands make them, by index into `folds`: collinear creases across one sheet that fold
/// the same way are one line, and so are the pieces of a curve. Every scored fold is in exactly one
/// line; those that only bend the card are in none.
std::vector<std::vector<std::size_t>> handFolds(const std::vector<Fold>& folds);

}  // namespace creasewright
