#pragma once

#include "styles/style.h"

namespace creasewright {

/// The direction in panel 0's frame that points upwards when the folded piece stands as its product
/// does: the product's height. The drawn face's side of panel 0 for a piece without a cavity.
Point3 uprightOf(const Piece& piece);

}  // namespace creasewright
