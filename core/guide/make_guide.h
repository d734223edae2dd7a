#pragma once

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// The steps from the stock sheet to the finished design, piece by piece; every number comes from
/// the built design. A design with problems still gets its guide.
Guide makeGuide(const BuiltDesign& built);

}  // namespace creasewright
