#pragma once

#include <string>
#include <vector>

#include "base/result.h"
#include "pages/page_frame.h"

namespace creasewright {

/// One page's part of the net.
struct Tile {
  std::string name;  ///< column letter and row number from the top left: `B1`
  int column = 0;
  int row = 0;    ///< 0 = top
  Bounds window;  ///< of the (turned) blank's plane, overlap included
};

/// How a blank is spread over pages.
struct Tiling {
  PageFrame frame;
  bool turned = false;  ///< the net is turned left by a quarter
  int columns = 1;
  int rows = 1;
  double overlap = 10;
  std::vector<Tile> tiles;  ///< row by row from the top left
};

/// The fewest tiles over both orientations of the paper and of the net; among equals an upright net
/// first, then upright paper. The net lies in the middle of the tiles.
/// Error: TooManyTiles (more than 100).
Result<Tiling> planTiles(double blankWidth, double blankHeight, const PageSetup& setup,
                         double footHeight);

/// `A`, `B` … `Z`, `AA` …
std::string columnName(int column);

}  // namespace creasewright
