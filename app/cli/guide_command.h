#pragma once

#include "cli/command.h"

namespace creasewright {

/// Writes the illustrated guide; PDF and picture folders are painted.
Command guideCommand();

}  // namespace creasewright
