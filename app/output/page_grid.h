#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <span>
#include <vector>

namespace creasewright {

/// Widths of the cells of a row: a half, one or two of three columns; or two with the picture
/// beside the words, the first of its row.
enum class CellWidth { Third, Half, TwoThirds, Beside };
inline constexpr std::size_t kCellWidths = 4;

/// Width in mm of a cell where columns of a page of `width` mm stand `gap` mm apart.
double cellWidth(CellWidth cell, double width, double gap);

/// One thing to be set on pages that are filled from top to bottom, mm.
struct GridItem {
  /// Heights of the forms in which it stands alone over the whole width, the preferred one first.
  std::vector<double> alone;
  /// Heights as a cell beside others, by CellWidth; words of none = it has no cell so wide. In
  /// CellWidth::Beside the higher of both is the cell's.
  struct Cell {
    double picture = 0;
    double words = 0;
  };
  std::array<Cell, kCellWidths> cell{};
};

/// Items from `first` on side by side.
struct GridRow {
  std::size_t first = 0;
  std::size_t count = 1;
  std::size_t form = 0;                   ///< of GridItem::alone, when it stands alone
  std::span<const CellWidth> shape = {};  ///< widths of cells; none = it stands alone
  bool newPage = false;                   ///< the first row of its page
};

/// Of a row of cells: its words begin on one level below the highest picture, but for those beside
/// their picture.
struct RowHeights {
  double picture = 0;
  double words = 0;
  double beside = 0;
  [[nodiscard]] double sum() const { return std::max(picture + words, beside); }
};
RowHeights rowHeights(std::span<const GridItem> cells, std::span<const CellWidth> shape);

/// The rows of all items in their order on the fewest pages of `height` mm, rows `gap` mm apart;
/// of these the way that leaves no large room free on any page but the last, and has the fewest
/// uneven rows. An item higher than a page gets one of its own.
std::vector<GridRow> arrangeRows(const std::vector<GridItem>& items, double height, double gap);

}  // namespace creasewright
