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

/// The four bars that belong on every page, 100 mm and 4 in, lying and upright: 50 mm and 2 in
/// where less than `room` mm is left for them.
std::vector<Drawing> checkBars(double room = 1'000);

/// Both bars of one direction back to back, where there is room for one strip only.
Drawing checkBarPair(double room, bool upright);

/// Trim frame along the joined sides of a tile, three concentric quarter circles at its corners
/// with the tile's name beside them, and the neighbours' names; the tile's plane is moved by
/// `shift` onto the page. Names go where `space` is free and are left out where there is no room.
Drawing alignmentMarks(const Tiling& tiling, const Tile& tile, Point shift, const Wording& wording,
                       FreeSpace& space);

/// A map of all tiles with `tile` shaded, at most `width` x `height` mm.
Drawing pageMap(const Tiling& tiling, const Tile& tile, double width, double height);

}  // namespace creasewright
