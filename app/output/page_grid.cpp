#include "output/page_grid.h"

#include <algorithm>
#include <limits>

namespace creasewright {

namespace {

// What counts, from heavy to light: pages, a page with an empty third, room left, uneven rows.
constexpr double kPage = 1e6;
constexpr double kEmptyThird = 1e4;
constexpr double kRoom = 150;      // for a whole page left free
constexpr double kSmallForm = 12;  // for each form below the preferred one
constexpr double kAloneCost = 9;   // a step that could stand in a row

struct Shape {
  std::span<const CellWidth> cells;
  double cost;
};

constexpr std::array kThirds{CellWidth::Third, CellWidth::Third, CellWidth::Third};
constexpr std::array kHalves{CellWidth::Half, CellWidth::Half};
constexpr std::array kRightWide{CellWidth::Third, CellWidth::TwoThirds};
constexpr std::array kLeftWide{CellWidth::TwoThirds, CellWidth::Third};
constexpr std::array kBeside{CellWidth::Beside, CellWidth::Third};
constexpr std::array kShapes{Shape{kThirds, 0}, Shape{kHalves, 2}, Shape{kRightWide, 4},
                             Shape{kLeftWide, 4}, Shape{kBeside, 5}};

const GridItem::Cell& cellOf(const GridItem& item, CellWidth width) {
  return item.cell[static_cast<std::size_t>(width)];
}

/// Whether every item has a cell of the width it would get.
bool haveAll(std::span<const GridItem> items, std::span<const CellWidth> widths) {
  for (std::size_t k = 0; k < items.size(); ++k)
    if (cellOf(items[k], widths[k]).words <= 0) return false;
  return true;
}

/// Fills page after page; what follows a page does not depend on what stands before it.
class RowSearch {
 public:
  RowSearch(const std::vector<GridItem>& items, double height, double gap)
      : items_(items), height_(height), gap_(gap), best_(items.size() + 1) {
    best_.back().cost = 0;
    for (std::size_t i = items.size(); i-- > 0;) {
      start_ = i;
      fill(i, 0, 0);
    }
  }

  [[nodiscard]] std::vector<GridRow> rows() const {
    std::vector<GridRow> all;
    for (std::size_t i = 0; i < items_.size();) {
      bool first = true;
      for (GridRow row : best_[i].page) {
        row.newPage = first;
        first = false;
        i = row.first + row.count;
        all.push_back(row);
      }
    }
    return all;
  }

 private:
  struct Best {
    double cost = std::numeric_limits<double>::infinity();
    std::vector<GridRow> page;
  };

  /// All ways to go on on a page that holds the items from `start_` to before `next`.
  void fill(std::size_t next, double used, double cost) {
    if (next > start_) close(next, used, cost);
    if (next == items_.size()) return;
    const std::vector<double>& alone = items_[next].alone;
    const bool cell = cellOf(items_[next], CellWidth::Half).words > 0;
    for (std::size_t form = 0; form < alone.size(); ++form) {
      row({next, 1, form, {}, false}, alone[form], used,
          cost + (cell ? kAloneCost : 0) + kSmallForm * static_cast<double>(form));
    }
    for (const Shape& shape : kShapes) {
      const std::size_t count = shape.cells.size();
      const std::span<const GridItem> cells(items_.data() + next,
                                            std::min(count, items_.size() - next));
      if (cells.size() < count || !haveAll(cells, shape.cells)) continue;
      const RowHeights heights = rowHeights(cells, shape.cells);
      if (heights.sum() > height_) continue;
      double room = 0;
      for (std::size_t k = 0; k < count; ++k) {
        const GridItem::Cell& each = cellOf(cells[k], shape.cells[k]);
        room += shape.cells[k] == CellWidth::Beside
                    ? heights.sum() - std::max(each.picture, each.words)
                    : heights.sum() - heights.picture - each.words;
      }
      row({next, count, 0, shape.cells, false}, heights.sum(), used,
          cost + shape.cost + room / static_cast<double>(count) / 4);
    }
  }

  void row(const GridRow& row, double high, double used, double cost) {
    const double after = used + (used > 0 ? gap_ : 0) + high;
    if (used > 0 && after > height_) return;
    page_.push_back(row);
    fill(row.first + row.count, after, cost);
    page_.pop_back();
  }

  void close(std::size_t next, double used, double cost) {
    if (next < items_.size()) {
      const double room = std::max(0.0, height_ - used) / height_;
      cost += kRoom * room * room + (room > 1.0 / 3 ? kEmptyThird : 0);
    }
    cost += kPage + best_[next].cost;
    if (cost < best_[start_].cost) best_[start_] = {cost, page_};
  }

  const std::vector<GridItem>& items_;
  double height_;
  double gap_;
  std::size_t start_ = 0;
  std::vector<GridRow> page_;
  std::vector<Best> best_;
};

}  // namespace

double cellWidth(CellWidth cell, double width, double gap) {
  const double third = (width - 2 * gap) / 3;
  switch (cell) {
    case CellWidth::Third:
      return third;
    case CellWidth::Half:
      return (width - gap) / 2;
    case CellWidth::TwoThirds:
    case CellWidth::Beside:
      return 2 * third + gap;
  }
  return width;
}

RowHeights rowHeights(std::span<const GridItem> cells, std::span<const CellWidth> shape) {
  RowHeights heights;
  for (std::size_t k = 0; k < shape.size(); ++k) {
    const GridItem::Cell& cell = cellOf(cells[k], shape[k]);
    if (shape[k] == CellWidth::Beside) {
      heights.beside = std::max({heights.beside, cell.picture, cell.words});
      continue;
    }
    heights.picture = std::max(heights.picture, cell.picture);
    heights.words = std::max(heights.words, cell.words);
  }
  return heights;
}

std::vector<GridRow> arrangeRows(const std::vector<GridItem>& items, double height, double gap) {
  return RowSearch(items, height, gap).rows();
}

}  // namespace creasewright
