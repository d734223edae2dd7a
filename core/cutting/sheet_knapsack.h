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

/// The grids of both axes of a sheet.
struct SheetGrid {
  CutGrid across;
  CutGrid up;
  bool exact = true;  ///< false: lengths were rounded up to a coarser step; what is found fits, but
                      ///< something better may exist

  [[nodiscard]] std::size_t cells() const { return across.sizes.size() * up.sizes.size(); }
  /// Sums that a programme over all cells and cuts takes.
  [[nodiscard]] std::size_t work() const {
    return across.pairs * up.sizes.size() + up.pairs * across.sizes.size();
  }
};

/// The exact grid, or, where that would take more than `mostWork`, one of rounded lengths. Turned
/// items count with both sides along either axis.
SheetGrid sheetGrid(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                    std::size_t mostWork);

/// One way to cut a sheet and what it is worth.
struct Pattern {
  double value = 0;
  std::vector<int> counts;  ///< by item
  CutNode sheet;            ///< lengths are units as nanometres
};

/// The most valuable way to cut one sheet edge to edge (guillotine cuts, any number of stages),
/// each item as often as wanted: dynamic programme over the sheet's grid (Gilmore & Gomory, Oper.
/// Res. 14, 1966; Beasley, J. Oper. Res. Soc. 36, 1985). As the grid counts each item only as often
/// as it is wanted, the result lies between the best of that many and the best of any number.
class SheetKnapsack {
 public:
  SheetKnapsack(std::int64_t width, std::int64_t height, std::vector<KnapsackItem> items);

  /// Whether best() is the best of all; with very many raster points it is only good.
  [[nodiscard]] bool exact() const { return grid_.exact; }

  /// `values` by item, not negative.
  Pattern best(const std::vector<double>& values);

 private:
  /// An item as it may lie, and the first sizes of the grid that hold it.
  struct Lying {
    std::size_t item = 0;
    bool turned = false;
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::size_t i = 0;
    std::size_t k = 0;
    double value = 0;
  };

  [[nodiscard]] std::size_t cell(std::size_t i, std::size_t k) const {
    return i * grid_.up.sizes.size() + k;
  }
  void place(const Lying& lying);
  void fill();
  CutNode build(std::size_t i, std::size_t k, const CutNode& frame, Pattern& pattern) const;

  std::int64_t width_;
  std::int64_t height_;
  std::vector<KnapsackItem> items_;
  SheetGrid grid_;
  std::vector<double> value_;
  std::vector<Lying> lying_;
};

/// What no pattern of a sheet is worth more than: the best one after all lengths were rounded down
/// to a step coarse enough to be quick and exact, so at least the best of all. Infinite where a
/// blank is smaller than the step.
double mostWorth(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                 const std::vector<double>& values);

}  // namespace creasewright
