#pragma once

#include <optional>
#include <string>

#include "document/design.h"

namespace creasewright {

/// An edit as written on the command line: `opening:on=front,shape=heart,width=panel-width / 3`.
/// Besides the kind's own measures there are `on` (a panel, the end of its name, or `piece:panel`)
/// and, for what changes an edge, `edge`. Nothing when it cannot be read (the problem is told).
std::optional<Edit> readEditArgument(const std::string& argument, const Design& design);

}  // namespace creasewright
