#pragma once

#include <span>
#include <vector>

#include "document/build.h"

namespace creasewright {

/// The way in which a loose or slotted piece comes off the one it is held to: an axis of that one's
/// panel 0, as a unit vector in its frame, along which no panel of the piece is in the way; upwards
/// first, and to the left first out of what is open at both ends. `up` is in the same frame.
Point3 wayOff(const BuiltPiece& piece, const BuiltPiece& other, Point3 up);

/// Whether a piece comes off that way too: no panel of it is behind the other.
bool comesOffAlong(const BuiltPiece& piece, const BuiltPiece& other, Point3 way);

/// Where further ones of a piece that is made several times stand, in the frame of the first:
/// slotted pieces one in every slot of the piece they cross. `pieces` are those of its box.
std::vector<Transform> copiesOf(const BuiltPiece& piece, std::span<const BuiltPiece* const> pieces);

}  // namespace creasewright
