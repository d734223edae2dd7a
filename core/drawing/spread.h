#pragma once

#include <vector>

namespace creasewright {

/// Moves sorted positions apart so that neighbours are at least `gap` apart, with the least sum of
/// squared moves (pool adjacent violators). Order is kept.
std::vector<double> spreadApart(const std::vector<double>& sorted, double gap);

}  // namespace creasewright
