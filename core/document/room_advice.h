#pragma once

#include "document/build.h"

namespace creasewright {

/// Adds to every CavityTooSmall of the design the parameter that makes room and the least value of
/// it: what the product asks for, else what a few trials show. Nothing is added where neither
/// helps: style and product do not suit each other.
void adviseOnRoom(BuiltDesign& built);

/// build() without that advice.
Result<BuiltDesign> buildWithoutAdvice(const Design& design);

}  // namespace creasewright
