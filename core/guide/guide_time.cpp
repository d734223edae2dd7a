#include "guide/guide_time.h"

#include <algorithm>
#include <cmath>

namespace creasewright {

int minutesFor(const Guide& guide) {
  double minutes = 2.0 * static_cast<double>(guide.steps.size());
  for (const Step& step : guide.steps)
    for (const Cut& cut : step.cuts) minutes += 0.25 * static_cast<double>(1 + cut.repeats.size());
  return std::max(5, static_cast<int>(std::ceil(minutes / 5)) * 5);
}

}  // namespace creasewright
