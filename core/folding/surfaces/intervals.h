#pragma once

#include <vector>

namespace creasewright {

/// A part of a line, as parameters 0..1 along it.
struct Interval {
  double from = 0;
  double to = 1;
};

/// What is left of 0..1 without `taken`; parts not longer than `smallest` are left out.
std::vector<Interval> without(std::vector<Interval> taken, double smallest);

}  // namespace creasewright
