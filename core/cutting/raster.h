#pragma once

#include <cstdint>
#include <vector>

namespace creasewright {

/// Sums of the given lengths, each used at most as often as told, up to `most`; ascending, with 0.
/// Empty when there are more than 20000.
std::vector<std::int64_t> rasterPoints(const std::vector<std::int64_t>& lengths,
                                       const std::vector<int>& atMost, std::int64_t most);

/// Reduced raster points (Terno, Lindemann & Scheithauer, Zuschnittprobleme, 1987): of the raster
/// points p only the largest not above most - p. Cuts elsewhere give nothing better. Ascending,
/// with 0 and the largest raster point.
std::vector<std::int64_t> reducedRasterPoints(const std::vector<std::int64_t>& points,
                                              std::int64_t most);

/// The reduced raster points of a side, at most about 400 of them.
struct Raster {
  std::vector<std::int64_t> points;
  bool exact = true;  ///< false: lengths were rounded up to a coarser step; what is found fits, but
                      ///< something better may exist
};
Raster rasterOf(const std::vector<std::int64_t>& lengths, const std::vector<int>& atMost,
                std::int64_t side);

/// Index of the largest point that is not above `value`.
std::size_t floorIndex(const std::vector<std::int64_t>& points, std::int64_t value);

}  // namespace creasewright
