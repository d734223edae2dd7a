#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "document/design.h"

namespace creasewright {

/// A line of the flat net that a hand can take hold of: an edge of a panel, folded or cut.
struct Handle {
  int piece = 0;      ///< of the style's pieces
  std::string panel;  ///< id
  int edge = 0;       ///< corner `edge` to the next one of its outline
  int corners = 0;    ///< of the outline, by which a net with other rounded corners is known

  bool operator==(const Handle&) const = default;
};

/// A measure that moves a line.
struct PullWay {
  std::string_view key;
  double perMm = 0;  ///< how far the line goes along its normal, mm for each mm of the measure
  bool ofProduct = false;  ///< the product asks for this measure: changing it changes the cavity
};

/// Which measures move a line, and how far, the strongest first; of equals the style's order. The
/// middle of the piece's first panel stays where it is. Found by making the net with each measure a
/// little larger or smaller. Empty when the line follows from no measure, or is not there.
std::vector<PullWay> waysToPull(const Design& design, const Handle& handle);

/// What came of a pull.
struct Pulled {
  Length value;                    ///< of the measure
  double gone = 0;                 ///< how far the line comes to lie from where it was, mm
  std::optional<Problem> stopped;  ///< the limit that the hand ran into
};

/// The value of `way`, one of waysToPull(design, handle), with which the line comes to lie `byMm`
/// farther along its outward normal (mm), as near as its limits and its shape let it and, unless
/// `offGrid`, on the tool grid. `design` is the one before the pull.
Pulled pull(const Design& design, const Handle& handle, const PullWay& way, double byMm,
            bool offGrid);

/// The outward normal of the line on the blank, and its middle seen from the middle of the piece's
/// first panel, mm.
struct HandlePlace {
  Point middle;
  Point normal;
};
std::optional<HandlePlace> placeOfHandle(const Design& design, const Handle& handle);

}  // namespace creasewright
