#pragma once

#include <span>

#include "document/design.h"
#include "extras/punch.h"

namespace creasewright {

/// The design with its punched labels and layers in the sizes of these punches: each takes the
/// largest that is no larger than it. What none of them can make is cut.
Design withPunches(Design design, std::span<const Punch> punches);

}  // namespace creasewright
