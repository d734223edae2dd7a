#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "styles/style.h"

namespace creasewright {

/// Whether every parameter lies inside its limits.
bool withinLimits(std::span<const ParameterSpec> specs, const Parameters& parameters,
                  const Workbench& bench);

/// The key of the first parameter outside its limits, empty when there is none.
std::string_view firstOutside(std::span<const ParameterSpec> specs, const Parameters& parameters,
                              const Workbench& bench);

/// `parameters` with as few values changed as the search finds, each as little as the tool grid
/// lets it (else to 0.01 mm or 1/64 in), so that all lie inside their limits together. A parameter
/// outside its limits is moved first; another only where the limits leave it no value. Lengths
/// beyond 1.5 m and counts beyond 1 000 count as these. Nothing when no such values are found.
std::optional<Parameters> movedWithinLimits(std::span<const ParameterSpec> specs,
                                            const Parameters& parameters, const Workbench& bench,
                                            const Floors& floors = {});

/// The least and the most raw value of one parameter with all others as they are, from the value it
/// has outwards: both are inside all limits. The parameters must be.
struct RawRange {
  std::int64_t least = 0;
  std::int64_t most = 0;
};
RawRange possibleRange(std::span<const ParameterSpec> specs, const Parameters& parameters,
                       const Workbench& bench, std::string_view key);

}  // namespace creasewright
