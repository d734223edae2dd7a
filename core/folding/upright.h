#pragma once

#include "styles/style.h"

namespace creasewright {

/// The direction in panel 0's frame that points upwards when the folded piece stands as its product
/// does: the product's height. A piece that goes over another lies with the outside of panel 0 up,
/// so that its front shows.
Point3 uprightOf(const Piece& piece);

}  // namespace creasewright
