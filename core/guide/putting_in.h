#pragma once

#include <optional>

#include "document/build.h"

namespace creasewright {

/// When the product goes into a piece, and from where.
struct PuttingIn {
  int after = 0;         ///< this fold stage; Net::stageCount() = when all is folded
  bool holds = true;     ///< walls stand round it by then; else it goes in as the next stage closes
  bool through = false;  ///< two opposite ends are open
  Point3 from;           ///< the way of its middle, frame of panel 0, mm
  Point3 to;
};

/// The last moment at which the space for the product can still be reached along one of its own
/// axes. Nothing for a piece with no space of its own, or for another piece.
std::optional<PuttingIn> puttingIn(const BuiltPiece& piece);

/// Whether no panel of the piece in a pose of its own comes into the middle of its space, as far as
/// it has one.
bool roomStaysFree(const BuiltPiece& piece, const Pose& pose);

/// The piece that the product goes into, of BuiltDesign::pieces: of the box's own pieces with a
/// space for it the one with the smallest. Nothing where none has.
std::optional<int> productPiece(const BuiltDesign& built);

/// And how it goes in.
struct ProductHolder {
  int piece = 0;  ///< of BuiltDesign::pieces
  PuttingIn putting;
};
std::optional<ProductHolder> productHolder(const BuiltDesign& built);

}  // namespace creasewright
