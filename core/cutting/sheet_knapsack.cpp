#include "cutting/sheet_knapsack.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "cutting/cut_tree.h"
#include "cutting/raster.h"

namespace creasewright {
namespace {

constexpr std::int64_t kMostParts = 4096;  // of the longer side, in the finest coarse grid
constexpr double kKnapsackSum = 0.2;       // steps that a sum takes
constexpr double kCell = 1;
constexpr std::size_t kMostBounding = 1'000'000'000;  // sums of the one pricing for a bound
constexpr double kMostValue = 1 << 30;
// Raster points of a side. Inches and millimetres together make many, but few below the middle, so
// that few sizes are reached from the sheet.
constexpr std::size_t kMostPoints = 20'000;

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
  std::vector<std::int64_t> points = rasterPoints(lengths, atMost, most, kMostPoints);
  // What fits the side may not fit when it is rounded up: the whole side stays a size.
  if (step > 1 && !points.empty() && points.back() < most) points.push_back(most);
  return points;
}

}  // namespace

SheetGrid sheetGrid(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                    std::size_t mostWork) {
  const std::int64_t longer = std::max(width, height);
  const std::size_t mostPairs = std::min<std::size_t>(mostWork / 64, 1'500'000);
  for (std::int64_t step = 1;;
       step = step == 1 ? std::max<std::int64_t>(2, longer / kMostParts) : step * 2) {
    const std::vector<std::int64_t> xs = pointsAlong(items, true, width, step);
    if (xs.empty()) continue;
    const std::vector<std::int64_t> ys = pointsAlong(items, false, height, step);
    if (ys.empty()) continue;
    std::optional<CutGrid> across = cutGrid(xs, width, mostPairs);
    std::optional<CutGrid> up = across ? cutGrid(ys, height, mostPairs) : std::nullopt;
    if (!up) continue;
    SheetGrid grid{*std::move(across), *std::move(up), step == 1};
    if (grid.work() <= mostWork) return grid;
  }
}

SheetKnapsack::SheetKnapsack(std::int64_t width, std::int64_t height,
                             std::vector<KnapsackItem> items, std::size_t mostWork)
    : width_(width),
      height_(height),
      items_(std::move(items)),
      grid_(sheetGrid(width, height, items_, mostWork)),
      stride_((grid_.up.sizes.size() + kLanes - 1) / kLanes * kLanes),
      kernels_(rowKernels()) {}

double SheetKnapsack::mostScale(const std::vector<double>& worths) const {
  double dearest = 0;  // worth of the sheet
  for (std::size_t item = 0; item < items_.size(); ++item) {
    const double share = static_cast<double>(items_[item].width) / static_cast<double>(width_) *
                         static_cast<double>(items_[item].height) / static_cast<double>(height_);
    if (share > 0) dearest = std::max(dearest, worths[item] / share);
  }
  return dearest > 0 ? kMostValue / dearest : kMostValue;
}

/// What the parts of a size hold without a cut, from what those of the size before do.
void SheetKnapsack::placeItems(std::size_t i, std::vector<std::int32_t>& base) const {
  for (const Lying& lying : lying_) {
    if (lying.i != i) continue;
    for (std::size_t k = lying.k; k < grid_.up.sizes.size(); ++k)
      base[k] = std::max(base[k], lying.value);
  }
}

/// The level cuts of some rows at once.
void SheetKnapsack::joinLevel(std::size_t i, std::size_t rows) {
  const std::size_t count = grid_.up.sizes.size();
  block_.assign(count * kLanes, 0);
  for (std::size_t lane = 0; lane < rows; ++lane)
    for (std::size_t k = 0; k < count; ++k) block_[k * kLanes + lane] = value_[cell(i + lane, k)];
  for (std::size_t k = 1; k < count; ++k)
    kernels_.cuts(block_.data(), k, grid_.up.cuts[k].data(), grid_.up.cuts[k].size());
  for (std::size_t lane = 0; lane < rows; ++lane)
    for (std::size_t k = 0; k < count; ++k) value_[cell(i + lane, k)] = block_[k * kLanes + lane];
}

/// Upright cuts join whole rows, level ones several rows at once: those whose sizes differ by less
/// than the smallest part, so that none of them is a part of another.
bool SheetKnapsack::fill(Work& work) {
  const std::vector<std::int64_t>& sizes = grid_.across.sizes;
  std::vector<std::int32_t> base(stride_, 0);
  std::size_t rows = 0;
  for (std::size_t i = 1; i < sizes.size(); i += rows) {
    rows = 1;
    while (rows < kLanes && i + rows < sizes.size() && sizes[i + rows] - sizes[i] < sizes[1])
      ++rows;
    std::size_t sums = grid_.up.pairs * kLanes;
    for (std::size_t row = i; row < i + rows; ++row) {
      placeItems(row, base);
      std::ranges::copy(base, value_.begin() + static_cast<std::ptrdiff_t>(cell(row, 0)));
      for (const CutPair& cut : grid_.across.cuts[row])
        kernels_.rows(&value_[cell(row, 0)], &value_[cell(cut.first, 0)],
                      &value_[cell(cut.second, 0)], stride_);
      sums += grid_.across.cuts[row].size() * stride_;
    }
    joinLevel(i, rows);
    if (!work.add(kKnapsackSum * static_cast<double>(sums) +
                  kCell * static_cast<double>((rows + kLanes) * stride_)))
      return false;
  }
  return true;
}

/// Reads the pattern out of the values: whatever gives a cell's value is as good as any other.
CutNode SheetKnapsack::build(std::size_t i, std::size_t k, const CutNode& frame,
                             Pattern& pattern) const {
  const std::int32_t value = value_[cell(i, k)];
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
  Work endless(std::numeric_limits<double>::infinity());
  return *best(values, endless);
}

std::optional<Pattern> SheetKnapsack::best(const std::vector<double>& values, Work& work) {
  value_.assign(grid_.across.sizes.size() * stride_, 0);
  lying_.clear();
  for (std::size_t item = 0; item < items_.size(); ++item)
    for (const bool turned : {false, true}) {
      if (values[item] <= 0 || (turned && !items_[item].mayTurn)) continue;
      const std::int64_t w = turned ? items_[item].height : items_[item].width;
      const std::int64_t h = turned ? items_[item].width : items_[item].height;
      lying_.push_back({item, turned, w, h, firstFrom(grid_.across, w), firstFrom(grid_.up, h),
                        static_cast<std::int32_t>(values[item])});
    }
  if (!fill(work)) return std::nullopt;
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
                 const std::vector<double>& values, Work& work) {
  constexpr double kEndless = std::numeric_limits<double>::infinity();
  const std::int64_t longer = std::max(width, height);
  // An exact grid of them is needed: rounding up inside would undo rounding down.
  for (const std::int64_t parts : {1000, 600, 240}) {
    const std::int64_t step = (longer + parts - 1) / parts;
    std::vector<KnapsackItem> coarse = items;
    for (KnapsackItem& item : coarse) {
      item.width /= step;
      item.height /= step;
      if (item.width == 0 || item.height == 0) return kEndless;
    }
    SheetKnapsack sheet(width / step, height / step, std::move(coarse), kMostBounding);
    if (!sheet.exact()) continue;
    const double scale = std::min(1.0, sheet.mostScale(values));
    std::vector<double> whole;
    for (const double value : values) whole.push_back(std::ceil(value * scale));
    const std::optional<Pattern> best = sheet.best(whole, work);
    return best ? best->value / scale : kEndless;
  }
  return kEndless;
}

}  // namespace creasewright
