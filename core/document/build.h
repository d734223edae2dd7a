#pragma once

#include <map>
#include <optional>
#include <vector>

#include "base/once.h"
#include "document/design.h"
#include "extras/extra_kind.h"
#include "folding/cavity/cavity.h"
#include "folding/cavity/round_room.h"
#include "making/fold_plan.h"
#include "making/glue_plan.h"
#include "making/score_plan.h"
#include "making/waste.h"
#include "net/flat_net.h"
#include "net/pose.h"

namespace creasewright {

/// What a piece of an extra has besides.
struct ExtraRole {
  int extra = 0;  ///< index into Design::extras
  Placing placing = Placing::OnFace;
  std::vector<FacePlace> faces;     ///< their `piece` is one of BuiltDesign::pieces
  std::optional<Transform> around;  ///< Round, Hanging: its panel 0 in the frame of the first piece
  int host = kOnBox;                ///< index into Design::extras, or the box
  std::optional<LayerFacts> layer = {};
};

struct BuiltPiece : Piece {
  Card card;
  FlatNet flat;
  Pose folded;
  ScorePlan scorePlan;
  std::vector<GlueArea> gluePlan;
  std::vector<WastePiece> waste;
  std::optional<CavitySize> cavitySize;
  CavityBox cavityBox = {};                 ///< where it is, in the frame of the cavity's panel
  std::optional<RoundRoom> roundRoom = {};  ///< where a round product stands that the box is no
                                            ///< room for: between slanting or polygonal walls
  std::optional<ExtraRole> role;            ///< nothing for the box's own pieces
  Once<Problems> wayProblems = {};          ///< asked for by pathProblems()
  Once<FoldPlan> folds = {};                ///< asked for by foldPlan()
};

/// What the way of folding meets (checkFoldPath): found once for a built piece and its copies.
const Problems& pathProblems(const BuiltPiece& piece);

/// The folds of a piece in their order, with the bends that it needs (neededBends): found once.
const FoldPlan& foldPlan(const BuiltPiece& piece);

/// Everything that follows from a design. Every output reads this and nothing else.
struct BuiltDesign {
  Design design;
  const Style* style = nullptr;
  std::vector<BuiltPiece> pieces;  ///< the box's own first, then those of its extras
  std::vector<RibbonNeed> ribbons;
  std::optional<ProductCells> cells;        ///< of the room for the product, where it is parted
  std::map<int, Problem> brokenEdits;       ///< by index into Design::edits, why one is not made
  std::map<int, Problem> brokenStyleEdits;  ///< by index into the edits of Design::ownStyle
  std::vector<FitReason> reasons;           ///< how the product's measures became parameters
  Problems problems;                        ///< without errors when all checks hold
  Problems warnings;                        ///< what asks for care in making (makingWarnings)
};

/// One piece of a net, flat, folded and planned for the design's tools; what its net does not hold
/// goes to `problems`.
BuiltPiece buildPiece(Piece piece, const Card& card, const Design& design, Problems& problems);

/// Builds all pieces and runs every check; what does not hold is in `problems`.
/// Errors: UnknownStyle; the first of limitProblems when a parameter is outside its limits.
Result<BuiltDesign> build(const Design& design);

/// BuiltDesign::problems, its warnings, and what the way of folding meets (pathProblems of every
/// piece): too slow for every move of the mouse, quick enough for one change.
Problems everyProblem(const BuiltDesign& built);

/// Every parameter of the design outside its limits; empty when it can be built.
Problems limitProblems(const Design& design);

}  // namespace creasewright
