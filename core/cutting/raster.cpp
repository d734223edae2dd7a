#include "cutting/raster.h"

#include <algorithm>
#include <iterator>

namespace creasewright {
namespace {

constexpr std::size_t kMostWalked = 40'000'000;  // points, for the cuts of all sizes

/// The cuts of the part whose size is the point `x`, by indices of points. As the first part grows,
/// the second shrinks, so both are found by walking along the points; a cut whose first part is no
/// larger than that of the one before has a second part that is no larger either.
std::vector<CutPair> cutsOf(const std::vector<std::int64_t>& points, std::size_t x) {
  std::vector<CutPair> cuts;
  std::size_t second = x;
  std::size_t first = 0;
  for (std::size_t a = 1; a < points.size() && 2 * points[a] <= points[x]; ++a) {
    while (points[second] > points[x] - points[a]) --second;
    if (second == 0) break;
    while (first + 1 < points.size() && points[first + 1] <= points[x] - points[second]) ++first;
    if (cuts.empty() || first > cuts.back().first)
      cuts.push_back({static_cast<std::uint32_t>(first), static_cast<std::uint32_t>(second)});
  }
  return cuts;
}

}  // namespace

std::vector<std::int64_t> rasterPoints(const std::vector<std::int64_t>& lengths,
                                       const std::vector<int>& atMost, std::int64_t most,
                                       std::size_t mostSums) {
  std::vector<std::int64_t> points{0};
  std::vector<std::int64_t> shifted;
  std::vector<std::int64_t> grown;
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    const std::vector<std::int64_t> before = points;
    std::int64_t more = 0;
    for (int k = 0; k < atMost[i] && more + lengths[i] <= most; ++k) {
      more += lengths[i];
      shifted.clear();
      for (const std::int64_t p : before) {
        if (p + more > most) break;
        shifted.push_back(p + more);
      }
      grown.clear();
      std::ranges::set_union(points, shifted, std::back_inserter(grown));
      std::swap(points, grown);
      if (points.size() > mostSums) return {};
    }
  }
  return points;
}

std::optional<CutGrid> cutGrid(const std::vector<std::int64_t>& points, std::int64_t side,
                               std::size_t mostPairs) {
  const auto whole =
      static_cast<std::size_t>(std::ranges::upper_bound(points, side) - points.begin() - 1);
  std::vector<bool> reached(whole + 1, false);
  std::vector<std::vector<CutPair>> cuts(whole + 1);
  reached[0] = reached[whole] = true;
  CutGrid grid{{}, {}, 0};
  std::size_t walked = 0;
  for (std::size_t x = whole; x > 0; --x) {
    if (!reached[x]) continue;
    walked += x;
    if (walked > kMostWalked) return std::nullopt;
    cuts[x] = cutsOf(points, x);
    grid.pairs += cuts[x].size();
    if (grid.pairs > mostPairs) return std::nullopt;
    for (const CutPair& cut : cuts[x]) reached[cut.first] = reached[cut.second] = true;
  }
  std::vector<std::uint32_t> index(whole + 1, 0);
  for (std::size_t x = 0; x <= whole; ++x) {
    if (!reached[x]) continue;
    index[x] = static_cast<std::uint32_t>(grid.sizes.size());
    grid.sizes.push_back(points[x]);
    for (CutPair& cut : cuts[x]) cut = {index[cut.first], index[cut.second]};
    grid.cuts.push_back(std::move(cuts[x]));
  }
  return grid;
}

}  // namespace creasewright
