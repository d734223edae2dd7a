#pragma once

#include <optional>
#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

/// A page in cells of 1 mm that remembers which of them are taken, to find room for texts and
/// marks.
class FreeSpace {
 public:
  explicit FreeSpace(double width, double height);

  void blockLine(const Polyline& line);
  void block(const Bounds& box);

  /// Whether no blocked cell touches `box`, and it lies on the page.
  [[nodiscard]] bool isFree(const Bounds& box) const;

  /// Lower left corner of a free place of `width` x `height` mm inside `within`, the one nearest to
  /// `wish` (its own lower left corner), or nothing.
  [[nodiscard]] std::optional<Point> find(double width, double height, const Bounds& within,
                                          Point wish) const;

 private:
  void mark(int column, int row);
  void sum() const;

  int columns_;
  int rows_;
  std::vector<int> taken_;         // row by row, 1 = taken
  mutable std::vector<int> sums_;  // summed areas, rebuilt when `stale_`
  mutable bool stale_ = true;
};

}  // namespace creasewright
