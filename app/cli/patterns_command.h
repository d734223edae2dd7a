#pragma once

#include "cli/command.h"

namespace creasewright {

/// Lists the patterns of paper, with their usual repeat, their colours and how they may be turned;
/// `--json` as DEVELOPERS.md describes it.
Command patternsCommand();

}  // namespace creasewright
