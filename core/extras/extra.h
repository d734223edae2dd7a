#pragma once

#include <string>
#include <vector>

#include "fit/card.h"
#include "styles/parameters.h"

namespace creasewright {

/// One layer of a stack: its parameters are those of `layerParameters()`.
struct ExtraLayer {
  Parameters parameters;
  Card card;
  std::vector<std::string> lines;  ///< what is written on it
  bool operator==(const ExtraLayer&) const = default;
};

/// Values of Extra::host besides the index of another extra of the design.
inline constexpr int kOutermost = -1;  ///< what shows outermost on its side
inline constexpr int kOnBox = -2;      ///< the box itself

/// Something that goes with the box and follows it: a band, mats, a label. Small and saved with the
/// design; its measures come from the finished box wherever a parameter is 0.
struct Extra {
  std::string kind;       ///< id of an ExtraKind
  Parameters parameters;  ///< of the kind
  Card card;              ///< what it is cut from
  std::string face;       ///< `piece:panel` of the box it belongs to; empty = chosen for the box
  std::vector<std::string> lines;  ///< what is written on it
  int host = kOutermost;           ///< what it lies on, goes round or hangs on
  std::vector<ExtraLayer> layers;  ///< glued onto it, the lowest first
  bool operator==(const Extra&) const = default;
};

}  // namespace creasewright
