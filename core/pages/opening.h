#pragma once

#include "document/build.h"
#include "guide/putting_in.h"

namespace creasewright {

/// How far a gift is open in a picture: 0 closed, 1 all that closes it undone and lifted off.
inline constexpr double kClosed = 0;
inline constexpr double kAjar = 0.5;
inline constexpr double kOpen = 1;

/// The fold stages of a piece that close it, and may be undone to look into it.
struct ClosingStages {
  int after = 0;       ///< those after this one; Net::stageCount() = none
  bool glued = false;  ///< they are glued: then it is only parted a little
  bool ends = false;   ///< only the flaps of one end come out (pages/opened_end.h)
};

/// Those after the last that is glued, of the stages after which the piece can no longer be reached
/// into; of walls that a lid alone holds up, and of covers, those in which they move; the last one
/// where a flap slides in there. `putting` is how the product goes into the piece, if it does.
ClosingStages closingStages(const BuiltPiece& piece, const std::optional<PuttingIn>& putting);

/// Directions in the frame of a piece's panel 0.
struct Upright {
  Point3 up;
  Point3 front;  ///< towards whoever looks at it
};

/// The folded piece with its closing stages undone by a share, 0 to 1: the last first. Folds of
/// what is opened with another fold, as a tuck flap with its lid, stay folded; a lid that hinges in
/// front falls forwards, so that one sees in.
Pose openedPose(const BuiltPiece& piece, const ClosingStages& closing, double share,
                const Upright& stands);

/// The same with the flaps of its bottom hanging down that are not glued, so that one sees of what
/// kind it is.
Pose withOpenBottom(const BuiltPiece& piece, const ClosingStages& closing, double share,
                    const Upright& stands);

}  // namespace creasewright
