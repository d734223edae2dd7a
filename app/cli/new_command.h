#pragma once

#include "cli/command.h"

namespace creasewright {

/// Writes a new design. Nothing is written when an argument cannot be read or a limit is violated.
Command newCommand();

}  // namespace creasewright
