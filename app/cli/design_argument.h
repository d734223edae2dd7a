#pragma once

#include <optional>
#include <string>

#include "document/build.h"

namespace creasewright {

/// The design in the file that a command was given; tells the problem when there is none.
std::optional<Design> readDesignArgument(const std::string& file);

/// Whether the design's tools are marked in inches: its measures are then told in fractions.
bool measuresInInches(const Design& design);

}  // namespace creasewright
