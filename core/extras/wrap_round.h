#pragma once

#include <span>

#include "extras/host.h"

namespace creasewright {

/// What the bands, sleeves and ribbons among the extras cover, for those that find a place.
std::vector<WrapRound> wrapsOf(std::span<const Extra> extras, const Host& host);

/// The part of a face that a wrap lies over, in the panel's frame.
Region underWrap(const Host& host, const HostFace& face, const WrapRound& wrap);

}  // namespace creasewright
