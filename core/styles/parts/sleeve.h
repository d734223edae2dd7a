#pragma once

#include "net/net_builder.h"
#include "styles/style.h"

namespace creasewright {

/// A flat tube open at both ends; mm, scored measures.
struct Sleeve {
  double length;  ///< along the tube
  double width;   ///< of the front and the back
  double depth;   ///< of the two sides
  double seam;    ///< glued inside the front
  double notch;   ///< radius of the thumb notches at one end, 0 for none
};

/// Adds the root `front` (edges `near`, `right`, `far`, `left`), `front/right`, `front/right/back`,
/// `front/right/back/left` and its `seam`, folded in the stage
/// before `stage`; in `stage` the front comes down on the seam, which would have to go through it
/// if all folded at once.
void addSleeve(NetBuilder& net, const Sleeve& sleeve, int stage);

/// The space in the tube; the product's length lies along the tube.
Cavity insideOf(const Sleeve& sleeve);

}  // namespace creasewright
