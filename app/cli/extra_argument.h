#pragma once

#include <optional>
#include <string>

#include "document/design.h"

namespace creasewright {

/// An extra as written on the command line: `label`, `label:shape=oval,width=2in,text=Plum jam`.
/// Besides the kind's own measures there are `card`, `face` (`piece:panel`) and `text`, which goes
/// last, may hold commas, and begins a new line at each `/`. Nothing when it cannot be read (the
/// problem is told).
std::optional<Extra> readExtraArgument(const std::string& argument, const Design& design);

}  // namespace creasewright
