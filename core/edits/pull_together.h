#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "edits/gauge.h"

namespace creasewright {

/// A thing and how far it shall go: a line along its outward normal, a distance by how much it
/// grows, mm.
struct Aim {
  Movable thing;
  double byMm = 0;
};

/// What came of pulling with several measures.
struct PulledTogether {
  std::vector<std::pair<std::string_view, Length>> values;  ///< of all measures that took part
  std::vector<double> gone;        ///< how far each thing comes to lie from where it was, mm
  std::optional<Problem> stopped;  ///< the limit that kept a measure from going on
};

/// Brings one or two things as near to where they shall go as the measures `keys` of the style let
/// them, with the least change of these measures: damped least squares on the numerical derivative
/// of the things by each measure (K. Levenberg, Quart. Appl. Math. 2, 1944, 164-168; D. Marquardt,
/// J. SIAM 11, 1963, 431-441). A measure that runs into a limit stays there and the others go on.
/// On the tool grid unless `offGrid`. `design` is the one before the pull.
PulledTogether pullTogether(const Design& design, const std::vector<Aim>& aims,
                            const std::vector<std::string_view>& keys, bool offGrid);

}  // namespace creasewright
