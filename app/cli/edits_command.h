#pragma once

#include "cli/command.h"

namespace creasewright {

/// `edits`: lists the kinds of changes by hand with their measures; with a style, the panels and
/// edges that they may name.
Command editsCommand();

}  // namespace creasewright
