#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "net/net_builder.h"
#include "styles/style.h"

namespace creasewright {

/// A base with four walls; tabs at the ends of the short walls are glued inside the long ones. mm.
struct GluedTray {
  double length, width, depth, tab;
};

enum GluedTrayStage { LongWalls = 1, CornerTabs, ShortWalls };
/// The codes of these stages in order.
std::vector<std::string> gluedTrayStages();

/// A tab for gluing: both ends taper by 15 degrees (3/8 to 5/8 in wide, ends tapered 15 to 45
/// degrees: common practice, no published source). `width` along its crease.
Shape gluedTab(double width, double depth);

/// Adds the root `base` (edges `front`, `right`, `back`, `left`) and its walls `base/front`,
/// `base/back` (along the length), `base/left`, `base/right` with tabs such as
/// `base/left/front-tab`. `longWall` and `shortWall` are rectangles of the tray's measures, cut
/// as the style likes on their outer edges.
void addGluedTray(NetBuilder& net, const GluedTray& tray, const Shape& longWall,
                  const Shape& leftWall, const Shape& rightWall);

/// The space above the base up to the rim.
Cavity insideOf(const GluedTray& tray);

/// A lid that is put over a piece whose base, `below` in size, is its panel 0: loose, upside down,
/// in the middle, its base a caliper above the walls.
Holding lidOn(std::string_view piece, const GluedTray& lid, const GluedTray& below, double caliper);

/// Limits of a tab whose partner lies on the same wall of the length `key`.
ParameterSpec cornerTabParameter(std::string_view lengthKey);
/// A limit for the length of a wall that holds two tabs of the smallest size.
Limit shortestTabbedWall();

}  // namespace creasewright
