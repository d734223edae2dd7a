#pragma once

#include "cutting/nesting.h"
#include "drawing/drawing.h"
#include "kits/class_kit.h"

namespace creasewright {

/// Mats of one card for a cutting machine.
struct MachinePlan {
  Card card;
  std::vector<NestPart> parts;
  std::vector<MatLayout> layouts;
  std::vector<Drawing> drawings;  ///< one for each layout, in true size: cuts, scores, writing
  int mats = 0;
};

/// Nests every piece of the kit, real outlines, for all sets; a plan for each card. Errors: those
/// of build() and nest().
Result<std::vector<MachinePlan>> planMachine(const ClassKit& kit, Length matWidth, Length matHeight,
                                             const NestOptions& options = {});

}  // namespace creasewright
