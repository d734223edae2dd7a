#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cutting/price_rows.h"

namespace creasewright {

/// Sums of the given lengths, each used at most as often as told, up to `most`; ascending, with 0.
/// Empty when there are more than `mostSums`.
std::vector<std::int64_t> rasterPoints(const std::vector<std::int64_t>& lengths,
                                       const std::vector<int>& atMost, std::int64_t most,
                                       std::size_t mostSums = 6000);

/// The sizes that parts of a sheet may have along one axis, and where each of them is cut.
///
/// Nothing is lost by it, at the sheet or at any part. What a part needs along the axis is a sum of
/// lengths of different blanks, so a point of the raster: each blank counts at most as often as it
/// is wanted (Herz, IBM J. Res. Dev. 16, 1972; Christofides & Whitlock, Oper. Res. 25, 1977). Of a
/// cut of x, one part needs no more than x/2; call it the first. It may be made exactly as large as
/// it needs, a point a; the rest x - a holds what the largest point q not above it holds; and then
/// the first may grow to the largest point l not above x - q. So it is enough to cut x into (l, q)
/// for each a, made anew from x itself. Taking the points that are left when the whole sheet is
/// filled for every part (the reduced raster of Terno, Lindemann & Scheithauer) would be right only
/// for blanks that are wanted without limit: p + a may use a blank more often than it is wanted, is
/// then no point, and parts are rounded down to sizes that are missing.
struct CutGrid {
  std::vector<std::int64_t> sizes{0};          ///< ascending; the last is that of the whole side
  std::vector<std::vector<CutPair>> cuts{{}};  ///< by size
  std::size_t pairs = 0;                       ///< in all of `cuts`
};

/// The grid of a side that is `side` long, from its raster points. Nothing when it would have more
/// than so many cuts, or take too long to find.
std::optional<CutGrid> cutGrid(const std::vector<std::int64_t>& points, std::int64_t side,
                               std::size_t mostPairs = 1'500'000);

}  // namespace creasewright
