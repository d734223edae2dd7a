#pragma once

#include <optional>
#include <vector>

#include "document/design.h"
#include "folding/cavity.h"
#include "making/glue_plan.h"
#include "making/score_plan.h"
#include "making/waste.h"
#include "net/flat_net.h"
#include "net/pose.h"

namespace creasewright {

struct BuiltPiece {
  Piece piece;
  FlatNet flat;
  Pose folded;
  ScorePlan scorePlan;
  std::vector<GlueArea> gluePlan;
  std::vector<WastePiece> waste;
  std::optional<CavitySize> cavity;
};

/// Everything that follows from a design. Every output reads this and nothing else.
struct BuiltDesign {
  Design design;
  const Style* style = nullptr;
  std::vector<BuiltPiece> pieces;
  std::vector<FitReason> reasons;  ///< how the product's measures became parameters
  Problems problems;               ///< empty when all checks hold
};

/// Builds all pieces and runs every check. Parameters outside their limits give the limit problems
/// in a Result with that first problem only when nothing can be built; else they are in `problems`.
Result<BuiltDesign> build(const Design& design);

/// As build, but on bad parameters returns all limit problems (empty = would build).
Problems limitProblems(const Design& design);

}  // namespace creasewright
