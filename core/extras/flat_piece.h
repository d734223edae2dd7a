#pragma once

#include <string>
#include <vector>

#include "extras/piece_words.h"
#include "geometry/region.h"
#include "styles/style.h"

namespace creasewright {

/// A piece that is cut and not folded, its outline moved so that its bounds begin at (0, 0).
Piece flatPiece(std::string name, Area area, const std::vector<std::string>& lines = {},
                const WordsLook& look = {});

/// Whole steps of the user's punches: a quarter inch, or 5 mm away from an inch grid (common
/// practice, no published source).
Length punchStep(ToolGrid grid);
/// The largest whole number of steps that is not longer than `mm`.
Length wholeSteps(double mm, ToolGrid grid);
/// On the tool grid, never longer than `mm`.
Length onGridBelow(double mm, ToolGrid grid);

/// A rectangle from (0, 0) whose corners are rounded, counter-clockwise.
Polygon roundedRectangle(double width, double height, double radius);
/// An ellipse from (0, 0) with a wavy edge, `wave` mm from tip to tip or a little more.
Polygon scallop(double width, double height, double wave);

}  // namespace creasewright
