#pragma once

#include "cutting/price_rows.h"

// The inner loops of pricing, for the two files that compile them for different machines. They use
// nothing of the library, lest code for one machine is linked into the other.

namespace creasewright {
namespace {

using Lanes = std::int32_t __attribute__((vector_size(kLanes * sizeof(std::int32_t))));
using LanesAt =
    std::int32_t __attribute__((vector_size(kLanes * sizeof(std::int32_t)), aligned(4), may_alias));

void joinRows(std::int32_t* row, const std::int32_t* first, const std::int32_t* second,
              std::size_t length) {
  for (std::size_t k = 0; k < length; k += kLanes) {
    const Lanes sum = *reinterpret_cast<const LanesAt*>(first + k) +
                      *reinterpret_cast<const LanesAt*>(second + k);
    const Lanes old = *reinterpret_cast<const LanesAt*>(row + k);
    *reinterpret_cast<LanesAt*>(row + k) = sum > old ? sum : old;
  }
}

void joinCuts(std::int32_t* block, std::size_t k, const CutPair* cuts, std::size_t count) {
  Lanes best = *reinterpret_cast<const LanesAt*>(block + k * kLanes);
  for (std::size_t c = 0; c < count; ++c) {
    const Lanes sum = *reinterpret_cast<const LanesAt*>(block + cuts[c].first * kLanes) +
                      *reinterpret_cast<const LanesAt*>(block + cuts[c].second * kLanes);
    best = sum > best ? sum : best;
  }
  *reinterpret_cast<LanesAt*>(block + k * kLanes) = best;
}

}  // namespace
}  // namespace creasewright
