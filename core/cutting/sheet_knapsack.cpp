#include "cutting/sheet_knapsack.h"

#include <algorithm>
#include <limits>

#include "cutting/cut_tree.h"
#include "cutting/raster.h"

namespace creasewright {
namespace {

/// Sums of one pricing: some hundredths of a second.
constexpr std::size_t kMostWork = 20'000'000;
constexpr std::int64_t kMostParts = 4096;  // of the longer side, in the finest coarse grid

Length units(std::int64_t value) { return Length::nanometres(value); }

/// Index of the first size of a grid that is not below `length`.
std::size_t firstFrom(const CutGrid& grid, std::int64_t length) {
  return static_cast<std::size_t>(std::ranges::lower_bound(grid.sizes, length) -
                                  grid.sizes.begin());
}

/// Lengths rounded up to whole steps.
std::vector<std::int64_t> pointsAlong(const std::vector<KnapsackItem>& items, bool width,
                                      std::int64_t most, std::int64_t step) {
  std::vector<std::int64_t> lengths;
  std::vector<int> atMost;
  const auto add = [&](std::int64_t length, int times) {
    lengths.push_back((length + step - 1) / step * step);
    atMost.push_back(times);
  };
  for (const KnapsackItem& item : items) {
    add(width ? item.width : item.height, item.atMost);
    if (item.mayTurn) add(width ? item.height : item.width, item.atMost);
  }
  std::vector<std::int64_t> points = rasterPoints(lengths, atMost, most);
  // What fits the side may not fit when it is rounded up: the whole side stays a size.
  if (step > 1 && !points.empty() && points.back() < most) points.push_back(most);
  return points;
}

}  // namespace

SheetGrid sheetGrid(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                    std::size_t mostWork) {
  const std::int64_t longer = std::max(width, height);
  for (std::int64_t step = 1;;
       step = step == 1 ? std::max<std::int64_t>(2, longer / kMostParts) : step * 2) {
    const std::vector<std::int64_t> xs = pointsAlong(items, true, width, step);
    const std::vector<std::int64_t> ys = pointsAlong(items, false, height, step);
    if (xs.empty() || ys.empty()) continue;
    std::optional<CutGrid> across = cutGrid(xs, width);
    std::optional<CutGrid> up = across ? cutGrid(ys, height) : std::nullopt;
    if (!up) continue;
    SheetGrid grid{*std::move(across), *std::move(up), step == 1};
    if (grid.work() <= mostWork) return grid;
  }
}

SheetKnapsack::SheetKnapsack(std::int64_t width, std::int64_t height,
                             std::vector<KnapsackItem> items)
    : width_(width),
      height_(height),
      items_(std::move(items)),
      grid_(sheetGrid(width, height, items_, kMostWork)) {}

/// The item where it lies in the lower left corner of every part that holds it.
void SheetKnapsack::place(const Lying& lying) {
  for (std::size_t i = lying.i; i < grid_.across.sizes.size(); ++i)
    for (std::size_t k = lying.k; k < grid_.up.sizes.size(); ++k)
      value_[cell(i, k)] = std::max(value_[cell(i, k)], lying.value);
}

/// Upright cuts join whole rows, so that several cells are done at once.
void SheetKnapsack::fill() {
  const std::size_t rows = grid_.up.sizes.size();
  for (std::size_t i = 1; i < grid_.across.sizes.size(); ++i) {
    double* row = &value_[cell(i, 0)];
    for (const CutPair& cut : grid_.across.cuts[i]) {
      const double* first = &value_[cell(cut.first, 0)];
      const double* second = &value_[cell(cut.second, 0)];
      for (std::size_t k = 1; k < rows; ++k) row[k] = std::max(row[k], first[k] + second[k]);
    }
    for (std::size_t k = 1; k < rows; ++k) {
      double best = row[k];
      for (const CutPair& cut : grid_.up.cuts[k])
        best = std::max(best, row[cut.first] + row[cut.second]);
      row[k] = best;
    }
  }
}

/// Reads the pattern out of the values: whatever gives a cell's value is as good as any other.
CutNode SheetKnapsack::build(std::size_t i, std::size_t k, const CutNode& frame,
                             Pattern& pattern) const {
  const double value = value_[cell(i, k)];
  if (value <= 0) return frame;
  for (const Lying& lying : lying_) {
    if (lying.value != value || lying.i > i || lying.k > k) continue;
    ++pattern.counts[lying.item];
    return blankIn(frame, units(lying.width), units(lying.height), static_cast<int>(lying.item),
                   lying.turned);
  }
  for (const CutPair& cut : grid_.across.cuts[i]) {
    if (value_[cell(cut.first, k)] + value_[cell(cut.second, k)] != value) continue;
    CutNode node = cutAt(frame, true, units(grid_.across.sizes[cut.first]));
    node.parts[0] = build(cut.first, k, node.parts[0], pattern);
    node.parts[1] = build(cut.second, k, node.parts[1], pattern);
    return node;
  }
  for (const CutPair& cut : grid_.up.cuts[k]) {
    if (value_[cell(i, cut.first)] + value_[cell(i, cut.second)] != value) continue;
    CutNode node = cutAt(frame, false, units(grid_.up.sizes[cut.first]));
    node.parts[0] = build(i, cut.first, node.parts[0], pattern);
    node.parts[1] = build(i, cut.second, node.parts[1], pattern);
    return node;
  }
  return frame;  // never: each value comes from one of these
}

Pattern SheetKnapsack::best(const std::vector<double>& values) {
  value_.assign(grid_.cells(), 0);
  lying_.clear();
  for (std::size_t item = 0; item < items_.size(); ++item)
    for (const bool turned : {false, true}) {
      if (values[item] <= 0 || (turned && !items_[item].mayTurn)) continue;
      const std::int64_t w = turned ? items_[item].height : items_[item].width;
      const std::int64_t h = turned ? items_[item].width : items_[item].height;
      lying_.push_back(
          {item, turned, w, h, firstFrom(grid_.across, w), firstFrom(grid_.up, h), values[item]});
      place(lying_.back());
    }
  fill();
  Pattern pattern;
  pattern.counts.assign(items_.size(), 0);
  const std::size_t i = grid_.across.sizes.size() - 1;
  const std::size_t k = grid_.up.sizes.size() - 1;
  pattern.value = value_[cell(i, k)];
  CutNode frame;
  frame.width = units(width_);
  frame.height = units(height_);
  pattern.sheet = build(i, k, frame, pattern);
  return pattern;
}

double mostWorth(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                 const std::vector<double>& values) {
  // So few that the grid of them is always exact: rounding up inside would undo rounding down.
  constexpr std::int64_t kParts = 240;
  const std::int64_t step = (std::max(width, height) + kParts - 1) / kParts;
  std::vector<KnapsackItem> coarse = items;
  for (KnapsackItem& item : coarse) {
    item.width /= step;
    item.height /= step;
    if (item.width == 0 || item.height == 0) return std::numeric_limits<double>::infinity();
  }
  SheetKnapsack sheet(width / step, height / step, std::move(coarse));
  return sheet.exact() ? sheet.best(values).value : std::numeric_limits<double>::infinity();
}

}  // namespace creasewright
