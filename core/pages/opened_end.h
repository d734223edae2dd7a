#pragma once

#include "document/build.h"

namespace creasewright {

/// Whether a panel is glued to another, or another to it.
bool isGlued(const Net& net, int panel);

/// Whether an end of the piece is closed by flaps that are bent over as a whole, as a pillow box's
/// are: none is glued, each is bent over on its own, and straightened again they go on with what
/// they hang on.
bool hasBentEnds(const BuiltPiece& piece);

/// The folded piece with the bent flaps straightened of the end that lies farthest towards `front`
/// (frame of panel 0), one flap after the other, the outer one first; `share` 0 to 1. Between two
/// flaps card would spring, and its strips part a little.
std::vector<Angle> endOutAngles(const BuiltPiece& piece, double share, Point3 front);
Pose withEndOut(const BuiltPiece& piece, double share, Point3 front);

}  // namespace creasewright
