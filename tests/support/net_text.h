#pragma once

#include <string>
#include <string_view>

#include "base/result.h"
#include "net/net.h"

namespace creasewright {

/// Writes a net as text, one item a line, for tests and golden files:
///
///     stage walls
///     panel base 0,0 40,0 40,20 0,20
///     panel base/front 0,0 40,0 40,10 0,10
///     crease base base/front 0,0 40,0 90 1 score
///     mate base/front/tab base/side inside glue rim
///
/// After the kind of a crease may stand `loop` or `follows`, `mountain` (for an angle of 0), and
/// `way` with its waypoints as stages,degrees; after `rim` or `inner` the `stage` of a mate.
/// Coordinates in mm to six decimals without trailing zeros, each panel in its own frame.
std::string toText(const Net& net);

/// Reads what toText wrote. Error: FieldUnreadable with `where` = "line N".
Result<Net> netFromText(std::string_view text);

}  // namespace creasewright
