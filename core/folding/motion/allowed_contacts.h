#pragma once

#include <string_view>
#include <vector>

#include "net/net.h"

namespace creasewright {

/// Two panels that may go through one another in a stage when rigid panels could not get where the
/// card goes; at the end of the stage they must be clear of each other again.
struct AllowedContact {
  int panel = 0;
  int other = 0;
  int stage = 1;
  std::string_view why;  ///< `tongue-through-slit`
};

/// All contacts of a net that the collision check lets pass: a locking tongue goes through a slit
/// or notch of its target, in the stage in which the two come together. No other flap has such
/// leave: what must bend on its way in, a tuck flap say, is declared as a Bend. Glued flaps and
/// flaps that rest land flat, which the check's tolerance takes for no collision, from the side
/// that the mate states.
std::vector<AllowedContact> allowedContacts(const Net& net);

/// The last stage in which two panels move against one another; 0 when they never do.
int meetingStage(const Net& net, int panel, int other);
/// The stage in which a mate meets its target, as the mate says or else by its panels.
int meetingStage(const Net& net, const Mate& mate);

}  // namespace creasewright
