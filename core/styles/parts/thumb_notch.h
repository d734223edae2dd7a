#pragma once

#include <string_view>

#include "net/net_builder.h"

namespace creasewright {

/// `shape` with a half-round notch of `radius` mm cut into the middle of a straight edge. The two
/// halves of the edge keep its name; the arc is called `<edge>-notch`. The edge must be longer than
/// the notch.
Shape withThumbNotch(Shape shape, std::string_view edge, double radius);

}  // namespace creasewright
