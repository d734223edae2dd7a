#pragma once

#include "guide/guide.h"

namespace creasewright {

/// About how long a guide takes, in minutes: two minutes a step and a quarter of a minute a cut, to
/// five minutes (common practice, no published source).
int minutesFor(const Guide& guide);

}  // namespace creasewright
