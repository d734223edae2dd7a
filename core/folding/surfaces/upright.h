#pragma once

#include "folding/surfaces/view.h"
#include "styles/style.h"

namespace creasewright {

/// The direction in panel 0's frame that points upwards when the folded piece stands as its product
/// does: the product's height. A piece that goes over another lies with the outside of panel 0 up,
/// so that its front shows.
Point3 uprightOf(const Piece& piece);

/// A view of the finished piece from its front: where panel 0 is a wall, its outside looks at the
/// eye, and not the face it was drawn on.
View frontView(View view, Point3 up);

/// As one looks at the finished piece from its front, in panel 0's frame.
struct Sides {
  Point3 right;
  Point3 away;
};
Sides sidesOf(Point3 up);

}  // namespace creasewright
