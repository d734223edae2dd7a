#pragma once

#include <map>

#include "document/build.h"
#include "extras/host.h"

namespace creasewright {

/// What became of the extras that change the box itself, by their index in Design::extras.
using CutWindows = std::map<int, Result<ExtraParts>>;

/// Cuts the openings of the design's windows into its pieces, before these are built.
CutWindows cutWindows(const Design& design, std::vector<Piece>& pieces);

/// The faces an extra of a kind may name, as Extra::face writes them, the largest first.
std::vector<std::string> faceNames(const BuiltDesign& built, const ExtraKind* kind = nullptr);

/// An extra of a kind for a design, as it would be added: at its standards, on the tool grid, and a
/// ribbon only once round where the other way would lead through the air.
Extra newExtra(const ExtraKind& kind, const Design& design);

/// Adds the pieces and ribbons of every extra to a design whose own pieces are built; what stands
/// against one goes to the problems, and the others are made.
void addExtras(const CutWindows& windows, BuiltDesign& built);

}  // namespace creasewright
