#pragma once

#include "styles/parts/tuck_box.h"

namespace creasewright {

/// A box with a tuck lid at both ends, the top lid on the back and the bottom lid on `bottom`.
std::vector<Piece> boxWithTwoLids(const TuckBox& box, Shape front, Shape back, LidOn bottom);

}  // namespace creasewright
