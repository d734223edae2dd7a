#pragma once

#include <cstdint>
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
  /// The inside of a closed outline, row by row.
  void blockArea(const Polygon& ring);

  /// Whether no blocked cell touches `box`, and it lies on the page.
  [[nodiscard]] bool isFree(const Bounds& box) const;

  /// Lower left corner of a free place of `width` x `height` mm inside `within`, the one nearest to
  /// `wish` (its own lower left corner), or nothing.
  [[nodiscard]] std::optional<Point> find(double width, double height, const Bounds& within,
                                          Point wish) const;

 private:
  using Word = std::uint64_t;
  struct Cells;

  void mark(int column, int row);
  /// Columns from `left` to before `right`.
  void markRow(int row, int left, int right);
  [[nodiscard]] Cells cellsOf(const Bounds& box) const;
  /// The cells of some rows, laid over each other.
  void rowsTaken(int bottom, int top, std::vector<Word>& all) const;
  /// The same for many asked one after the other: tall ones from doubled rows.
  void manyRowsTaken(int bottom, int top, std::vector<Word>& all) const;
  /// Whether each block of `size` rows, from the lowest on, has `wide` free columns side by side
  /// that begin from `first` to `last`.
  [[nodiscard]] std::vector<bool> openBlocks(int size, int wide, int first, int last) const;

  int columns_;
  int rows_;
  std::size_t stride_;       // words in a row
  std::vector<Word> taken_;  // row by row, a bit for each cell
  // The k-th holds each row with the 2^(k + 1) - 1 above it; made when asked for, gone with the
  // next mark.
  mutable std::vector<std::vector<Word>> doubled_;
};

}  // namespace creasewright
