#pragma once

#include "net/net.h"

namespace creasewright {

/// How long words may be on their panel of a net (net/inscription.h). mm
double roomFor(const Net& net, const Inscription& words);

/// How high they may be there, capitals and descenders counted, beside the other lines of their
/// panel that run the same way; no bound for those on an arc. mm
double heightRoomFor(const Net& net, const Inscription& words);

/// Makes words that are too long for their place smaller, all on a panel alike, though not below
/// 6.5 pt; but for those that have a size of their own.
void fitWords(Net& net);

}  // namespace creasewright
