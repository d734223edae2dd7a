#pragma once

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// Walks the steps of a proof that so many sheets of each kind do not give the blanks, in whole
/// numbers alone. `fits` are by kind of sheet all patterns that such sheets may be cut by, as
/// whoever checks has listed them; a step that names another one limits nothing. False where an end
/// is none, steps are missing, or the work was given up.
bool stepsHold(const CountProof& proof, const std::vector<std::vector<std::vector<int>>>& fits,
               const std::vector<int>& demand, Work& work);

}  // namespace creasewright
