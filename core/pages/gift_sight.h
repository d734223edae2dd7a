#pragma once

#include <optional>

#include "folding/surfaces/view.h"

namespace creasewright {

/// More stops of its strip than any gift has.
inline constexpr double kFinished = 1e6;

/// From where a gift is looked at, and when.
struct GiftSight {
  View view = standardView();
  std::optional<double> opening = {};  ///< kClosed .. kOpen; none = as it tells most
  double done = kFinished;             ///< stops of its strip (gift_strip.h)
};

}  // namespace creasewright
