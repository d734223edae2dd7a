#pragma once

#include "cli/command.h"

namespace creasewright {

/// Lists every style with its parameters, or ranks all for a product (suggest_command.h); `--json`
/// as DEVELOPERS.md describes it.
Command stylesCommand();

/// The same list for every kind of extra.
Command extrasCommand();

}  // namespace creasewright
