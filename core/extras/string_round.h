#pragma once

#include "base/result.h"
#include "extras/extra_kind.h"

namespace creasewright {

/// A string of its own for what hangs: once round the box, or along the band under it, and tied in
/// a bow. Errors: ExtraUnhung where it would lie in the air.
Result<RibbonNeed> stringRound(const Extra& hanging, const Host& host);

}  // namespace creasewright
