#pragma once

#include <vector>

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// The plans of one piece and where it stands among the pieces.
struct PiecePlans {
  int index = 0;
  const BuiltPiece& built;
  ScorePlan scores;
  CutPlan cuts;
  FoldPlan folds;
  AdhesivePlan adhesive;
};

/// The steps at the flat sheet: trim, score, fold and burnish, cut.
std::vector<Step> sheetSteps(const PiecePlans& plans);

/// Adhesive on the outside, then on the inside: a step for each face that takes some.
std::vector<Step> adhesiveSteps(const PiecePlans& plans);

/// Pieces that are trimmed one right after the other, and on whose sheets nothing else is done, are
/// trimmed in one step.
void trimTogether(std::vector<Step>& steps);

}  // namespace creasewright
