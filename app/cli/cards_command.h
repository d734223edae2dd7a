#pragma once

#include "cli/command.h"

namespace creasewright {

/// Lists the cards that can be named, thickness and weight beside each; `--json` as DEVELOPERS.md
/// describes it.
Command cardsCommand();

}  // namespace creasewright
