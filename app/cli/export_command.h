#pragma once

#include "cli/command.h"

namespace creasewright {

/// Writes one file; its name's ending says which kind. PDF and PNG are painted.
Command exportCommand();

}  // namespace creasewright
