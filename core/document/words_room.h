#pragma once

#include "net/net.h"

namespace creasewright {

/// How long words of this height may be where they stand: to both sides of the middle of their
/// line, from its descenders to its capitals, as far as their panel goes without an opening. mm
double roomFor(const Net& net, const Inscription& words);

/// Makes words that are too long for their place smaller, all on a panel alike, though not below
/// 6.5 pt.
void fitWords(Net& net);

}  // namespace creasewright
