#pragma once

#include <optional>

#include "document/build.h"

namespace creasewright {

/// The box that two halves of one blank make together (core/edits/kinds/halves.h), as the net and
/// pose of a single piece in the frame of the first half, whose panels come first. Nothing for the
/// second half, and for a piece that is whole.
struct Whole {
  Net net;
  Pose folded;
};
std::optional<Whole> wholeOf(const BuiltDesign& built, const BuiltPiece& piece);

/// Whether two pieces are the halves of one blank.
bool areHalves(const BuiltPiece& one, const BuiltPiece& other);

/// The piece as what is asked of all of it sees it: with its other half where it has one.
BuiltPiece asWhole(const BuiltDesign& built, const BuiltPiece& piece);

}  // namespace creasewright
