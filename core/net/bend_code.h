#pragma once

#include <string_view>

namespace creasewright {

/// Why card must bend in a stage, and so what the hand does there.
enum class BendCode {
  TuckSlidesIn,    ///< a flap gives a little on its way in
  PetalsOverlap,   ///< each petal lies over the next, the last under the first
  TubePinched,     ///< a tube's open ends are pressed flat
  CurvedScore,     ///< panels between curved scores are pressed in
  BottomOpens,     ///< a bottom glued flat swings down as the tube opens
  FoldsFlat,       ///< a bag is laid flat
  OpensAgain,      ///< and opened
  TabsFedIn,       ///< tabs go into the open end of a side that is rolled already
  InnerWallsCurl,  ///< inner walls of deep sides clear one another
};

/// As files name it: `tuck-slides-in`.
std::string_view bendName(BendCode code);

}  // namespace creasewright
