#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/region.h"

namespace creasewright {

/// A blank as far as it matters for cutting its print into tiles; blank coordinates in mm.
struct TiledSheet {
  double width = 0;
  double height = 0;
  Region card;                  ///< what stays
  std::vector<Segment> scores;  ///< a joint may run along them
};

/// One page's part of the net.
struct Tile {
  std::string name;  ///< column letter and row number from the top left: `B1`
  int column = 0;
  int row = 0;    ///< 0 = top
  Bounds window;  ///< what is printed: of the (turned) blank's plane, overlap included
  Bounds own;     ///< the window without half the overlap on joined sides
};

/// How a blank is spread over pages.
struct Tiling {
  bool turned = false;    ///< the net is turned left by a quarter
  bool sideways = false;  ///< the pages lie sideways
  int columns = 1;
  int rows = 1;
  double width = 0;  ///< of the (turned) blank
  double height = 0;
  double crossed = 0;       ///< mm of card that is cut through, off every score
  std::vector<Tile> tiles;  ///< row by row from the top left, without those that hold no card

  [[nodiscard]] bool has(int column, int row) const;
  /// Of pages; where there are far too many, they are only counted.
  [[nodiscard]] int count() const;
};

/// Room for the net on a page.
struct TileCell {
  bool sideways = false;
  double width = 0;
  double height = 0;
};

/// Where joints go among the places that need no more tiles: on scores and in waste rather than
/// across a panel, and then the first tile full or all alike.
enum class JointRule { FirstFull, Even };

/// The fewest tiles over the `cells` (one for each way a page may lie) and both turns of the net;
/// among equals the one that cuts through the least card, then an upright net, then the first cell.
/// Neighbours share `overlap` mm. Nothing: the cells are too small to overlap.
std::optional<Tiling> planTiles(const TiledSheet& sheet, const std::vector<TileCell>& cells,
                                double overlap, JointRule rule);

/// Tiles along one side: how many of `cell` mm with `overlap` mm shared cover `length` mm.
int tilesNeeded(double length, double cell, double overlap);

/// A sheet turned left by a quarter.
TiledSheet turnedLeft(const TiledSheet& sheet);

/// `A`, `B` … `Z`, `AA` …
std::string columnName(int column);

}  // namespace creasewright
