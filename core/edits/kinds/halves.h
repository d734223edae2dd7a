#pragma once

#include <string_view>

#include "net/piece.h"

namespace creasewright {

/// Whether a piece of that name is the second half of another one, from which a seam divides it.
/// The first half is glued onto it (Piece::held) by its last panel, a flap that stands where the
/// second half's first panel was hinged.
bool isOtherHalf(std::string_view piece);

/// Two halves as the net they were before they were divided, with the flap between them: the first
/// half's panels keep their numbers, those of the second come after them.
Net wholeNet(const Net& half, const Net& otherHalf);

}  // namespace creasewright
