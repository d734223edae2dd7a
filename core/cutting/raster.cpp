#include "cutting/raster.h"

#include <algorithm>
#include <set>

namespace creasewright {
namespace {

constexpr std::size_t kMostSums = 20000;
constexpr std::size_t kMostPoints = 300;

}  // namespace

std::vector<std::int64_t> rasterPoints(const std::vector<std::int64_t>& lengths,
                                       const std::vector<int>& atMost, std::int64_t most) {
  std::vector<std::int64_t> points{0};
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    std::vector<std::int64_t> grown = points;
    for (const std::int64_t p : points) {
      std::int64_t sum = p;
      for (int k = 0; k < atMost[i] && sum + lengths[i] <= most; ++k) {
        sum += lengths[i];
        grown.push_back(sum);
      }
    }
    std::ranges::sort(grown);
    grown.erase(std::unique(grown.begin(), grown.end()), grown.end());
    points = std::move(grown);
    if (points.size() > kMostSums) return {};
  }
  return points;
}

std::size_t floorIndex(const std::vector<std::int64_t>& points, std::int64_t value) {
  return static_cast<std::size_t>(std::ranges::upper_bound(points, value) - points.begin()) - 1;
}

std::vector<std::int64_t> reducedRasterPoints(const std::vector<std::int64_t>& points,
                                              std::int64_t most) {
  std::set<std::int64_t> kept{0, points.back()};
  for (const std::int64_t p : points) kept.insert(points[floorIndex(points, most - p)]);
  return {kept.begin(), kept.end()};
}

Raster rasterOf(const std::vector<std::int64_t>& lengths, const std::vector<int>& atMost,
                std::int64_t side) {
  Raster raster;
  std::vector<std::int64_t> rounded = lengths;
  for (std::int64_t parts = 4096; parts >= 64; parts /= 2) {
    const std::vector<std::int64_t> sums = rasterPoints(rounded, atMost, side);
    if (!sums.empty()) raster.points = reducedRasterPoints(sums, side);
    if (!sums.empty() && raster.points.size() <= kMostPoints) return raster;
    raster.exact = false;
    const std::int64_t step = std::max<std::int64_t>(1, side / parts);
    for (std::size_t i = 0; i < lengths.size(); ++i)
      rounded[i] = (lengths[i] + step - 1) / step * step;
  }
  return raster;
}

}  // namespace creasewright
