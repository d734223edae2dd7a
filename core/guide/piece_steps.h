#pragma once

#include <optional>

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// Index of the own piece that this one is glued onto; nothing when it is not glued to another.
std::optional<int> gluedOnto(const BuiltDesign& built, int piece);

/// A piece that is glued onto another one: its panel, the panel below, and how they lie once it is
/// in place.
struct Gluing {
  int panel = 0;
  int onto = 0;
  Transform seen;  ///< the glued panel's frame in that of the panel below

  Gluing(const BuiltPiece& upper, const BuiltPiece& lower);
};

/// The step in which the piece `upper`, its adhesive on, is glued onto the piece `lower`, both
/// still flat.
Step gluePiecesStep(const BuiltDesign& built, int upper, int lower);

}  // namespace creasewright
