#include "guide/guide_time.h"

#include <algorithm>
#include <cmath>

namespace creasewright {

namespace {

/// Stages that are told in one step are still done one after the other.
double minutesOf(const Step& step) {
  double minutes = 2.0 * static_cast<double>(std::max<std::size_t>(1, step.stages.size()));
  if (step.code == StepCode::TrimBlank && !step.pieces.empty())
    minutes += 1.0 * static_cast<double>(step.pieces.size() - 1);
  for (const Cut& cut : step.cuts) minutes += 0.25 * static_cast<double>(1 + cut.repeats.size());
  return minutes;
}

double sumOf(const Guide& guide) {
  double minutes = 0;
  for (const Step& step : guide.steps) minutes += minutesOf(step);
  return minutes;
}

}  // namespace

int minutesFor(const Guide& guide) {
  return std::max(5, static_cast<int>(std::ceil(sumOf(guide) / 5)) * 5);
}

std::vector<int> startMinutes(const Guide& guide) {
  const double sum = sumOf(guide);
  const double share = sum > 0 ? minutesFor(guide) / sum : 0;
  std::vector<int> starts;
  double at = 0;
  for (const Step& step : guide.steps) {
    starts.push_back(static_cast<int>(std::floor(at + 1e-9)));
    at += share * minutesOf(step);
  }
  starts.push_back(minutesFor(guide));
  return starts;
}

}  // namespace creasewright
