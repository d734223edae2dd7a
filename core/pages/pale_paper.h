#pragma once

#include "document/build.h"
#include "drawing/drawing.h"
#include "drawing/veil.h"

namespace creasewright {

/// The side of a piece that is up in its flat net: the back of the card, which becomes the inside;
/// of a flat piece that is glued on, the face that shows.
bool faceIsUp(const BuiltPiece& piece);

/// How much white is mixed into the card under a net, 0 to 1, so that lines of every role stand out
/// by 3 to 1 (WCAG 2.1, 1.4.11): none into light card. `turned`: the sheet lies with the card's
/// face up, as where something is put onto its outside.
double veilOver(const BuiltPiece& piece, bool turned = false);

/// The mean colour of the side that is up, under that veil; nothing where it is plain.
std::optional<Colour> paleColour(const BuiltPiece& piece, bool turned = false);

/// Where the paper of a piece lies on its blank, as it is seen on the side that is up.
PlaneMap paperOnBlank(const BuiltDesign& built, const BuiltPiece& piece);

/// The side that is up as it is printed, in the outline of the net (blank coordinates), under that
/// veil; nothing where it is plain.
std::vector<PathItem> palePrint(const BuiltDesign& built, const BuiltPiece& piece);

}  // namespace creasewright
