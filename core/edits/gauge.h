#pragma once

#include <functional>
#include <optional>
#include <string>
#include <variant>

#include "document/design.h"
#include "net/flat_net.h"
#include "styles/style.h"

namespace creasewright {

/// A line of the flat net that a hand can take hold of: an edge of a panel, folded or cut.
struct Handle {
  int piece = 0;      ///< of the style's pieces
  std::string panel;  ///< id
  int edge = 0;       ///< corner `edge` to the next one of its outline
  int corners = 0;    ///< of the outline, by which a net with other rounded corners is known

  bool operator==(const Handle&) const = default;
};

/// A distance on the blank that can be typed: how far a line lies from its left or its lower side,
/// or how large it is.
struct BlankDistance {
  int piece = 0;             ///< of the style's pieces
  bool fromLeft = true;      ///< else from below
  std::optional<Handle> to;  ///< the line; nothing = the blank's other side

  bool operator==(const BlankDistance&) const = default;
};

/// What can be moved by changing a measure.
using Movable = std::variant<Handle, BlankDistance>;

/// The outward normal of the line on the blank, and its middle seen from the middle of the piece's
/// first panel, mm.
struct HandlePlace {
  Point middle;
  Point normal;
};
std::optional<HandlePlace> placeOfHandle(const Design& design, const Handle& handle);

/// How large the distance is, mm; nothing where it is not there.
std::optional<double> distanceOf(const Design& design, const BlankDistance& distance);

/// How large a distance is on a piece that is laid flat, mm; nothing where it is not there.
std::optional<double> distanceOn(const Net& net, const FlatNet& flat,
                                 const BlankDistance& distance);

/// Where a thing lies for other measures: a line along the normal it has in the design, as seen
/// from the middle of its piece's first panel; a distance, how large it is. mm. Nothing beyond a
/// limit, or where it is not there. Lives no longer than the style.
using Gauge = std::function<std::optional<double>(const Parameters&)>;

/// Whether flaps give way to keep blanks on the grid, as in the built design; a little change of a
/// measure may then move nothing.
enum class Blanks { OnGrid, AsDrawn };

/// Nothing when the thing is not there.
std::optional<Gauge> gaugeOf(const Style& style, const Design& design, const Movable& thing,
                             Blanks blanks);

}  // namespace creasewright
