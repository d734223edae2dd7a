#pragma once

#include "document/build.h"
#include "document/json_parts.h"

namespace creasewright {

/// `setups` and `lines`; readings are written as a board with this grid shows them.
Json scorePlanJson(const ScorePlan& plan, ToolGrid grid);
/// The sheet to trim, then what is cut away or into.
Json cutPlanJson(const BuiltPiece& piece);
Json gluePlanJson(const BuiltPiece& piece);

}  // namespace creasewright
