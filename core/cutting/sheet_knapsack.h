#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cutting/cutting.h"
#include "cutting/raster.h"
#include "cutting/work.h"

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
  /// A grid of more than `mostWork` sums is made coarser.
  SheetKnapsack(std::int64_t width, std::int64_t height, std::vector<KnapsackItem> items,
                std::size_t mostWork = kMostPricing);

  static constexpr std::size_t kMostPricing = 300'000'000;  ///< sums: 60 million steps
  static constexpr std::size_t kQuickPricing = 8'000'000;

  /// Whether best() is the best of all; with very many raster points it is only good.
  [[nodiscard]] bool exact() const { return grid_.exact; }
  [[nodiscard]] std::size_t pairs() const { return grid_.across.pairs + grid_.up.pairs; }

  /// What worths may be multiplied by, at most, before they are made whole: sums of them then stay
  /// in 31 bits, as no sheet is worth more than its area of the blank that is worth most by area.
  [[nodiscard]] double mostScale(const std::vector<double>& worths) const;

  /// `values` by item: whole numbers, not negative, no larger than mostScale allows.
  Pattern best(const std::vector<double>& values);
  /// The same as counted work; nothing when that was given up.
  std::optional<Pattern> best(const std::vector<double>& values, Work& work);

 private:
  /// An item as it may lie, and the first sizes of the grid that hold it.
  struct Lying {
    std::size_t item = 0;
    bool turned = false;
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::size_t i = 0;
    std::size_t k = 0;
    std::int32_t value = 0;
  };

  [[nodiscard]] std::size_t cell(std::size_t i, std::size_t k) const { return i * stride_ + k; }
  bool fill(Work& work);
  void placeItems(std::size_t i, std::vector<std::int32_t>& base) const;
  void joinLevel(std::size_t i, std::size_t rows);
  CutNode build(std::size_t i, std::size_t k, const CutNode& frame, Pattern& pattern) const;

  std::int64_t width_;
  std::int64_t height_;
  std::vector<KnapsackItem> items_;
  SheetGrid grid_;
  std::size_t stride_;  // of a row, in whole lanes
  RowKernels kernels_;
  std::vector<std::int32_t> value_;
  std::vector<std::int32_t> block_;
  std::vector<Lying> lying_;
};

/// What no pattern of a sheet is worth more than: the best one after all lengths were rounded down
/// to a step coarse enough to be quick and exact, so at least the best of all. Infinite where a
/// blank is smaller than the step, or when the work was given up.
double mostWorth(std::int64_t width, std::int64_t height, const std::vector<KnapsackItem>& items,
                 const std::vector<double>& values, Work& work);

}  // namespace creasewright
