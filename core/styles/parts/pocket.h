#pragma once

#include "net/net_builder.h"
#include "styles/style.h"

namespace creasewright {

/// A pocket folded up in front of a back panel, deep enough for a flat thing; mm.
struct Pocket {
  double width;   ///< of back and pocket
  double depth;   ///< of the strip under it and of its sides
  double height;  ///< of its front
  double tab;     ///< glued on the back, inside
  double notch;   ///< radius of a thumb notch in the upper edge, 0 for none
};

/// Adds `back/bottom`, `back/bottom/pocket` and its `left-side`, `right-side` with a `tab` each to
/// the root `back`, which has the edges of uprightWall(). Sides and tabs fold first, then the strip
/// in `spineStage`, then the pocket.
void addPocket(NetBuilder& net, const Pocket& pocket, int sideStage, int spineStage,
               int pocketStage);

/// Between the back and the pocket; `height` mm high. The product's length stands upright.
Cavity insideOf(const Pocket& pocket, double height);

/// `length`, `width`, `depth`, `pocket` and `tab`.
std::vector<ParameterSpec> pocketParameters();

/// A caliper for the walls; on the depth the tabs and what is tucked into the pocket too.
StyleNeeds pocketNeeds();

/// Words of the stages and panels that these parts bring.
NetWords pocketWords();

}  // namespace creasewright
