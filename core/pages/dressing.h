#pragma once

#include "document/build.h"
#include "pages/panel_look.h"

namespace creasewright {

/// A folded net as it is drawn.
struct Dressed {
  Net net;
  Pose pose;
  std::vector<PanelLook> looks;         ///< by panel
  std::vector<Inscription> words = {};  ///< on outsides, turned in the frames of their panels
};

/// A piece by itself in a pose of its own. A patterned paper runs on over its creases.
Dressed undressed(const BuiltDesign& built, const BuiltPiece& piece, Pose pose);

/// A folded piece of the box with what the design's extras put onto it: mats, labels and the films
/// of windows on its faces, a band or sleeve round it, a ribbon; and with the pieces glued into it.
/// Their panels come after its own.
Dressed dressed(const BuiltDesign& built, const BuiltPiece& piece);

/// Which pieces a picture of the finished box shows: a piece that is part of another one's picture
/// is not drawn beside it again.
bool standsAlone(const BuiltDesign& built, const BuiltPiece& piece);

}  // namespace creasewright
