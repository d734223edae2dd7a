#pragma once

#include <string>
#include <vector>

#include "drawing/drawing.h"
#include "pages/free_space.h"
#include "pages/tiling.h"

namespace creasewright {

/// A check bar as its own small drawing: `millimetres` long with a division every `division` mm and
/// its length written beside the end; lying along x, or along y when `upright`.
Drawing checkBar(double millimetres, double division, const std::string& words, bool upright);

/// The four bars that belong on every page: 100 mm and 4 in, lying and upright.
std::vector<Drawing> checkBars();

/// Trim frame along the joined sides of `tile`, three concentric quarter circles at its corners
/// with the tile's name beside them, and the neighbours' names; all in page coordinates. Names go
/// where `space` is free and are left out where there is no room.
Drawing alignmentMarks(const Tiling& tiling, const Tile& tile, const Wording& wording,
                       FreeSpace& space);

/// A map of all tiles over the blank's outline with `tile` shaded, at most `width` x `height` mm.
Drawing pageMap(const Tiling& tiling, const Tile& tile, const Bounds& blank, double width,
                double height);

}  // namespace creasewright
