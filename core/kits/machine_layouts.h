#pragma once

#include "cutting/nesting.h"
#include "drawing/drawing.h"
#include "kits/build_kit.h"

namespace creasewright {

/// Mats of one card for a cutting machine.
struct MachineCard {
  Card card;
  std::vector<NestPart> parts;
  std::vector<MatLayout> layouts;
  std::vector<Drawing> drawings;  ///< one for each layout, in true size: cuts, scores, writing
  int mats = 0;
  int least = 0;  ///< mats that the parts take by their area
};

/// A class and how a machine cuts it. Copies share what is built.
struct MachinePlan {
  std::shared_ptr<const BuiltKit> built;  ///< never null
  std::vector<MachineCard> cards;         ///< by BuiltKit::cards
};

/// Nests every piece of the kit, real outlines, for all sets, card by card. Errors: those of
/// nest().
Result<MachinePlan> planMachine(BuiltKit kit, Length matWidth, Length matHeight,
                                const NestOptions& options = {});

}  // namespace creasewright
