#pragma once

#include "cli/command.h"

namespace creasewright {

/// Keeps, lists, checks and opens styles of one's own.
Command styleCommand();

}  // namespace creasewright
