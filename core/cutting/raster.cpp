#include "cutting/raster.h"

#include <algorithm>
#include <map>

namespace creasewright {
namespace {

constexpr std::size_t kMostSums = 6000;
constexpr std::size_t kMostPairs = 400'000;

/// A cut by the sizes of its parts.
struct SizePair {
  std::int64_t first = 0;
  std::int64_t second = 0;
};

/// The cuts of a part of size `x`, itself a point. As the first part grows, the second shrinks, so
/// both are found by walking along the points; a cut whose first part is no larger than that of the
/// one before has a second part that is no larger either.
std::vector<SizePair> cutsOf(const std::vector<std::int64_t>& points, std::int64_t x) {
  std::vector<SizePair> cuts;
  auto second = static_cast<std::size_t>(std::ranges::upper_bound(points, x) - points.begin()) - 1;
  std::size_t first = 0;
  for (std::size_t a = 1; a < points.size() && 2 * points[a] <= x; ++a) {
    while (points[second] > x - points[a]) --second;
    if (points[second] == 0) break;
    while (first + 1 < points.size() && points[first + 1] <= x - points[second]) ++first;
    if (cuts.empty() || points[first] > cuts.back().first)
      cuts.push_back({points[first], points[second]});
  }
  return cuts;
}

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

std::optional<CutGrid> cutGrid(const std::vector<std::int64_t>& points, std::int64_t side) {
  const std::int64_t whole = *(std::ranges::upper_bound(points, side) - 1);
  std::map<std::int64_t, std::vector<SizePair>> reached{{0, {}}};
  std::vector<std::int64_t> open{whole};
  std::size_t pairs = 0;
  while (!open.empty()) {
    const std::int64_t x = open.back();
    open.pop_back();
    if (reached.contains(x)) continue;
    const std::vector<SizePair>& cuts = reached[x] = cutsOf(points, x);
    pairs += cuts.size();
    if (pairs > kMostPairs) return std::nullopt;
    for (const SizePair& cut : cuts) open.insert(open.end(), {cut.first, cut.second});
  }
  CutGrid grid{{}, {}, pairs};
  std::map<std::int64_t, std::uint32_t> index;
  for (const auto& [size, cuts] : reached) {
    index[size] = static_cast<std::uint32_t>(grid.sizes.size());
    grid.sizes.push_back(size);
    std::vector<CutPair> indices;
    for (const SizePair& cut : cuts) indices.push_back({index.at(cut.first), index.at(cut.second)});
    grid.cuts.push_back(std::move(indices));
  }
  return grid;
}

}  // namespace creasewright
