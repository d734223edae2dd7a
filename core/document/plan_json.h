#pragma once

#include "document/build.h"
#include "document/json_parts.h"

namespace creasewright {

/// `setups` and `lines`; readings are written as a board with this grid shows them.
Json scorePlanJson(const ScorePlan& plan, ToolGrid grid);
/// The sheet to trim, what is cut away or into, and each stroke of the knife in order.
Json cutPlanJson(const BuiltPiece& piece);
/// The areas for adhesive, each with the tape that fits and the fold stage that closes it.
Json gluePlanJson(const BuiltPiece& piece, ToolGrid grid);
/// What to fold and burnish first, then the stages with their folds and joins.
Json foldPlanJson(const BuiltPiece& piece);

}  // namespace creasewright
