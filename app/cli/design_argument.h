#pragma once

#include <optional>
#include <string>

#include "document/build.h"

namespace creasewright {

/// The design in the file that a command was given; tells the problem when there is none.
std::optional<Design> readDesignArgument(const std::string& file);

}  // namespace creasewright
