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
  CavityBox cavityBox = {};  ///< where it is, in the frame of the cavity's panel
};

/// Everything that follows from a design. Every output reads this and nothing else.
struct BuiltDesign {
  Design design;
  const Style* style = nullptr;
  std::vector<BuiltPiece> pieces;
  std::vector<FitReason> reasons;  ///< how the product's measures became parameters
  Problems problems;               ///< empty when all checks hold
};

/// Builds all pieces and runs every check; what does not hold is in `problems`.
/// Errors: UnknownStyle; the first of limitProblems when a parameter is outside its limits.
Result<BuiltDesign> build(const Design& design);

/// BuiltDesign::problems and what the way of folding meets (checkFoldPath of every piece): too slow
/// for every move of the mouse, quick enough for one change.
Problems everyProblem(const BuiltDesign& built);

/// Every parameter of the design outside its limits; empty when it can be built.
Problems limitProblems(const Design& design);

}  // namespace creasewright
