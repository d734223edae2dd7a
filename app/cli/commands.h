#pragma once

#include <vector>

#include "cli/command.h"

namespace creasewright {

/// All commands, in the order of the help.
const std::vector<Command>& commands();

}  // namespace creasewright
