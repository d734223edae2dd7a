#pragma once

#include "cli/command.h"

namespace creasewright {

/// Builds a design and lists every problem: 0 all checks hold, 1 some fail, 2 unreadable.
Command checkCommand();

}  // namespace creasewright
