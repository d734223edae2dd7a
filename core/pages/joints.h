#pragma once

#include <vector>

#include "pages/tiling.h"

namespace creasewright {

/// Tiles that lack no more hold it all the same, mm.
inline constexpr double kTileSlack = 1e-6;

/// Places along one side of a sheet where its print is cut, and what they cut through.
struct Joints {
  std::vector<double> places;  ///< from the start of that side, mm
  double crossed = 0;          ///< mm of card off every score
};

/// The best places for the joints of `tiles` tiles along x, or along y from the top: every tile
/// with its shares of the overlap is at most `cell` mm long.
Joints chooseJoints(const TiledSheet& sheet, bool upright, int tiles, double cell, double overlap,
                    JointRule rule);

/// How much card the line x = `at` (or y = `at` from the foot) cuts through, in mm: what lies on a
/// score or along a cut does not count.
double cardCrossed(const TiledSheet& sheet, bool upright, double at);

}  // namespace creasewright
