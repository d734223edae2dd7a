#include "cutting/sheet_knapsack.h"

#include <algorithm>
#include <limits>

#include "cutting/cut_tree.h"
#include "cutting/raster.h"

namespace creasewright {
namespace {

Length units(std::int64_t value) { return Length::nanometres(value); }

}  // namespace

Raster rasterAlong(const std::vector<KnapsackItem>& items, bool width, std::int64_t most) {
  std::vector<std::int64_t> lengths;
  std::vector<int> atMost;
  for (const KnapsackItem& item : items) {
    lengths.push_back(width ? item.width : item.height);
    atMost.push_back(item.atMost);
    if (!item.mayTurn) continue;
    lengths.push_back(width ? item.height : item.width);
    atMost.push_back(item.atMost);
  }
  return rasterOf(lengths, atMost, most);
}

std::vector<std::uint32_t> restTable(const std::vector<std::int64_t>& points) {
  std::vector<std::uint32_t> rest(points.size() * points.size());
  for (std::size_t i = 0; i < points.size(); ++i)
    for (std::size_t a = 0; a <= i; ++a)
      rest[i * points.size() + a] =
          static_cast<std::uint32_t>(floorIndex(points, points[i] - points[a]));
  return rest;
}

SheetKnapsack::SheetKnapsack(std::int64_t width, std::int64_t height,
                             std::vector<KnapsackItem> items)
    : width_(width), height_(height), items_(std::move(items)) {
  Raster across = rasterAlong(items_, true, width_);
  Raster up = rasterAlong(items_, false, height_);
  exact_ = across.exact && up.exact;
  xs_ = std::move(across.points);
  ys_ = std::move(up.points);
  restX_ = restTable(xs_);
  restY_ = restTable(ys_);
}

void SheetKnapsack::place(std::size_t item, bool turned, double value) {
  const std::int64_t w = turned ? items_[item].height : items_[item].width;
  const std::int64_t h = turned ? items_[item].width : items_[item].height;
  const auto firstX = static_cast<std::size_t>(std::ranges::lower_bound(xs_, w) - xs_.begin());
  const auto firstY = static_cast<std::size_t>(std::ranges::lower_bound(ys_, h) - ys_.begin());
  for (std::size_t i = firstX; i < xs_.size(); ++i)
    for (std::size_t k = firstY; k < ys_.size(); ++k) {
      if (value <= value_[cell(i, k)]) continue;
      value_[cell(i, k)] = value;
      choice_[cell(i, k)] = {Choice::Item, turned, static_cast<std::int32_t>(item)};
    }
}

void SheetKnapsack::fill() {
  const std::size_t n = xs_.size();
  const std::size_t m = ys_.size();
  for (std::size_t i = 1; i < n; ++i) {
    for (std::size_t k = 1; k < m; ++k) {
      double best = value_[cell(i, k)];
      Choice choice = choice_[cell(i, k)];
      for (std::size_t a = 1; a < i && 2 * xs_[a] <= xs_[i]; ++a) {
        const double sum = value_[cell(a, k)] + value_[cell(restX_[i * n + a], k)];
        if (sum <= best) continue;
        best = sum;
        choice = {Choice::Upright, false, static_cast<std::int32_t>(a)};
      }
      const double* row = &value_[cell(i, 0)];
      for (std::size_t a = 1; a < k && 2 * ys_[a] <= ys_[k]; ++a) {
        const double sum = row[a] + row[restY_[k * m + a]];
        if (sum <= best) continue;
        best = sum;
        choice = {Choice::Level, false, static_cast<std::int32_t>(a)};
      }
      value_[cell(i, k)] = best;
      choice_[cell(i, k)] = choice;
    }
  }
}

CutNode SheetKnapsack::build(std::size_t i, std::size_t k, const CutNode& frame,
                             Pattern& pattern) const {
  const Choice& choice = choice_[cell(i, k)];
  if (choice.kind == Choice::Nothing) return frame;
  if (choice.kind == Choice::Item) {
    const auto item = static_cast<std::size_t>(choice.index);
    ++pattern.counts[item];
    const std::int64_t w = choice.turned ? items_[item].height : items_[item].width;
    const std::int64_t h = choice.turned ? items_[item].width : items_[item].height;
    return blankIn(frame, units(w), units(h), choice.index, choice.turned);
  }
  const bool upright = choice.kind == Choice::Upright;
  const auto a = static_cast<std::size_t>(choice.index);
  CutNode node = cutAt(frame, upright, units(upright ? xs_[a] : ys_[a]));
  if (upright) {
    node.parts[0] = build(a, k, node.parts[0], pattern);
    node.parts[1] = build(restX_[i * xs_.size() + a], k, node.parts[1], pattern);
  } else {
    node.parts[0] = build(i, a, node.parts[0], pattern);
    node.parts[1] = build(i, restY_[k * ys_.size() + a], node.parts[1], pattern);
  }
  return node;
}

Pattern SheetKnapsack::best(const std::vector<double>& values) {
  value_.assign(xs_.size() * ys_.size(), 0);
  choice_.assign(value_.size(), {});
  for (std::size_t item = 0; item < items_.size(); ++item) {
    if (values[item] <= 0) continue;
    place(item, false, values[item]);
    if (items_[item].mayTurn) place(item, true, values[item]);
  }
  fill();
  Pattern pattern;
  pattern.counts.assign(items_.size(), 0);
  const std::size_t i = xs_.size() - 1;
  const std::size_t k = ys_.size() - 1;
  pattern.value = value_[cell(i, k)];
  CutNode frame;
  frame.width = units(width_);
  frame.height = units(height_);
  pattern.sheet = build(i, k, frame, pattern);
  return pattern;
}

double mostWorth(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                 const std::vector<double>& values) {
  constexpr std::int64_t kParts = 360;
  const std::int64_t step = std::max<std::int64_t>(1, std::max(width, height) / kParts);
  std::vector<KnapsackItem> coarse = items;
  for (KnapsackItem& item : coarse) {
    item.width /= step;
    item.height /= step;
    if (item.width == 0 || item.height == 0) return std::numeric_limits<double>::infinity();
  }
  return SheetKnapsack(width / step, height / step, std::move(coarse)).best(values).value;
}

}  // namespace creasewright
