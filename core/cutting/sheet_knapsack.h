#pragma once

#include <cstdint>
#include <vector>

#include "cutting/cutting.h"
#include "cutting/raster.h"

namespace creasewright {

/// A blank as the knapsack sees it, in whole units of any kind.
struct KnapsackItem {
  std::int64_t width = 0;
  std::int64_t height = 0;
  bool mayTurn = false;
  int atMost = 1;  ///< no sheet needs more of it
};

/// Raster points along one axis; turned items count with their other side too.
Raster rasterAlong(const std::vector<KnapsackItem>& items, bool width, std::int64_t most);

/// For points i and a <= i, at [i * n + a]: the index of the largest point in points[i] -
/// points[a].
std::vector<std::uint32_t> restTable(const std::vector<std::int64_t>& points);

/// One way to cut a sheet and what it is worth.
struct Pattern {
  double value = 0;
  std::vector<int> counts;  ///< by item
  CutNode sheet;            ///< lengths are units as nanometres
};

/// The most valuable way to cut one sheet edge to edge (guillotine cuts, any number of stages),
/// each item as often as wanted: dynamic programme over reduced raster points, cuts up to the
/// middle only (Gilmore & Gomory, Oper. Res. 14, 1966; Beasley, J. Oper. Res. Soc. 36, 1985).
class SheetKnapsack {
 public:
  SheetKnapsack(std::int64_t width, std::int64_t height, std::vector<KnapsackItem> items);

  /// Whether best() is the best of all; with very many raster points it is only good.
  [[nodiscard]] bool exact() const { return exact_; }

  /// `values` by item, not negative.
  Pattern best(const std::vector<double>& values);

 private:
  struct Choice {
    enum Kind : std::int8_t { Nothing, Item, Upright, Level } kind = Nothing;
    bool turned = false;
    std::int32_t index = 0;  ///< item, or index of the cut's place
  };

  [[nodiscard]] std::size_t cell(std::size_t i, std::size_t k) const { return i * ys_.size() + k; }
  void place(std::size_t item, bool turned, double value);
  void fill();
  CutNode build(std::size_t i, std::size_t k, const CutNode& frame, Pattern& pattern) const;

  std::int64_t width_;
  std::int64_t height_;
  bool exact_ = true;
  std::vector<KnapsackItem> items_;
  std::vector<std::int64_t> xs_;
  std::vector<std::int64_t> ys_;
  std::vector<std::uint32_t> restX_;  ///< [i * n + a]: index of the largest point in xs[i] - xs[a]
  std::vector<std::uint32_t> restY_;
  std::vector<double> value_;
  std::vector<Choice> choice_;
};

/// What no pattern of a sheet is worth more than: the best one after all lengths were rounded down
/// to a step coarse enough to be quick, so at least the best of all.
double mostWorth(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                 const std::vector<double>& values);

}  // namespace creasewright
