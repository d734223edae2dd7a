#pragma once

#include <vector>

#include "making/fold_plan.h"

namespace creasewright {

/// A line as the hand folds it.
struct HandFold {
  std::vector<std::size_t> folds;  ///< by index, in their order
  bool curved = false;             ///< three pieces or more, and not all in one direction
};

/// Folds as hands make them: collinear creases across one sheet that fold the same way are one
/// line, and so are the pieces of a curve. Every scored fold is in exactly one line; those that
/// only bend the card are in none.
std::vector<HandFold> handFolds(const std::vector<Fold>& folds);

}  // namespace creasewright
