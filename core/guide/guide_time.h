#pragma once

#include "guide/guide.h"

namespace creasewright {

/// About how long a guide takes, in minutes: two minutes a step and a quarter of a minute a cut, to
/// five minutes (common practice, no published source).
int minutesFor(const Guide& guide);

/// The minute in which each step begins, and last the one in which all is done: minutesFor() shared
/// out by what the steps take.
std::vector<int> startMinutes(const Guide& guide);

}  // namespace creasewright
