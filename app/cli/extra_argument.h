#pragma once

#include <optional>
#include <string>

#include "document/design.h"

namespace creasewright {

/// An extra as written on the command line: `label`, `label:shape=oval,width=2in,text=Plum jam`.
/// Besides the kind's own measures there are `card`, `face` (`piece:panel`), `host` (findHost) and
/// `text`, which may hold commas, begins a new line at each `/`, and goes last, or before a
/// `layer` or what says how it is set (`font`, `align`, `curve`, `points`). `layer=SHAPE` begins a
/// layer on a label; what follows is told of that. Nothing when it cannot be read (the problem is
/// told).
std::optional<Extra> readExtraArgument(const std::string& argument, const Design& design);

}  // namespace creasewright
