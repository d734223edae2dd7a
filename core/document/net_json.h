#pragma once

#include <string>

#include "document/build.h"

namespace creasewright {

/// Every piece of a built design as JSON for other programs (format `creasewright-net`, version 1):
/// panels, creases, mates, cuts and the score, cut and glue plans, in millimetres with at most six
/// decimals, in blank coordinates. The same design always gives the same text.
std::string writeNetJson(const BuiltDesign& built);

}  // namespace creasewright
