#include "output/page_grid.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include <gtest/gtest.h>

#include "support/random.h"

namespace creasewright {
namespace {

GridItem cell(double picture, double words) {
  GridItem item;
  item.alone = {std::max(picture, words)};
  item.cell.fill({picture, words});
  return item;
}

std::size_t pagesOf(const std::vector<GridRow>& rows) {
  return static_cast<std::size_t>(std::ranges::count(rows, true, &GridRow::newPage));
}

double heightOf(const std::vector<GridItem>& items, const GridRow& row) {
  return row.shape.empty() ? items[row.first].alone.at(row.form)
                           : rowHeights({items.data() + row.first, row.count}, row.shape).sum();
}

/// The fewest pages by trying every way to cut the items into rows of one to three.
std::size_t fewestPages(const std::vector<GridItem>& items, double height, double gap) {
  std::size_t fewest = items.size();
  const std::function<void(std::size_t, std::size_t, double)> go = [&](std::size_t next,
                                                                       std::size_t pages,
                                                                       double used) {
    if (next == items.size()) {
      fewest = std::min(fewest, pages);
      return;
    }
    for (std::size_t count = 1; count <= 3 && next + count <= items.size(); ++count) {
      double picture = 0;
      double words = 0;
      for (std::size_t k = next; k < next + count; ++k) {
        picture = std::max(picture, items[k].cell[0].picture);
        words = std::max(words, items[k].cell[0].words);
      }
      double high = count == 1 ? items[next].alone[0] : picture + words;
      if (count == 2) {
        const GridItem::Cell& left = items[next].cell[0];  // its words may stand beside
        const GridItem::Cell& right = items[next + 1].cell[0];
        high = std::min(high, std::max({left.picture, left.words, right.picture + right.words}));
      }
      if (pages > 0 && used + gap + high <= height) {
        go(next + count, pages, used + gap + high);
      } else {
        go(next + count, pages + 1, high);
      }
    }
  };
  go(0, 0, 0);
  return fewest;
}

/// Every item once, in order, on pages that hold their rows, and no fewer pages would do.
TEST(PageGrid, RowsHoldAllItemsOnTheFewestPages) {
  testing::Random random(616);
  for (int round = 0; round < 60; ++round) {
    std::vector<GridItem> items;
    const int count = random.whole(1, 9);
    for (int i = 0; i < count; ++i) {
      items.push_back(cell(random.between(10, 50), random.between(10, 120)));
    }
    constexpr double kHeight = 240;
    constexpr double kGap = 6;
    const std::vector<GridRow> rows = arrangeRows(items, kHeight, kGap);
    std::size_t next = 0;
    double used = 0;
    for (const GridRow& row : rows) {
      EXPECT_EQ(row.first, next);
      EXPECT_EQ(row.count, std::max<std::size_t>(1, row.shape.size()));
      next += row.count;
      used = row.newPage ? heightOf(items, row) : used + kGap + heightOf(items, row);
      EXPECT_LE(used, kHeight + 1e-9);
    }
    EXPECT_EQ(next, items.size());
    EXPECT_EQ(pagesOf(rows), fewestPages(items, kHeight, kGap)) << "round " << round;
  }
}

/// Four that fit in a row of three and one: two rows, not four.
TEST(PageGrid, EvenCellsStandThreeBesideOneAnother) {
  const std::vector<GridItem> items(6, cell(40, 40));
  const std::vector<GridRow> rows = arrangeRows(items, 240, 6);
  ASSERT_EQ(rows.size(), 2U);
  EXPECT_EQ(rows[0].count, 3U);
  EXPECT_EQ(rows[1].count, 3U);
}

TEST(PageGrid, AWholeWidthItemBreaksARowAndTakesASmallerFormToSaveAPage) {
  std::vector<GridItem> items{cell(40, 40), {{200, 140}, {}}, cell(40, 40)};
  const std::vector<GridRow> rows = arrangeRows(items, 240, 6);
  ASSERT_EQ(rows.size(), 3U);
  EXPECT_EQ(rows[1].form, 1U);
  EXPECT_EQ(pagesOf(rows), 1U);
  items[1].alone = {500};
  EXPECT_EQ(pagesOf(arrangeRows(items, 240, 6)), 3U);
}

TEST(PageGrid, ColumnsFillTheWidth) {
  for (const double width : {180.0, 191.9}) {
    const auto of = [width](CellWidth cell) { return cellWidth(cell, width, 6); };
    EXPECT_NEAR(3 * of(CellWidth::Third) + 12, width, 1e-9);
    EXPECT_NEAR(2 * of(CellWidth::Half) + 6, width, 1e-9);
    EXPECT_NEAR(of(CellWidth::Third) + of(CellWidth::TwoThirds) + 6, width, 1e-9);
    EXPECT_NEAR(2 * of(CellWidth::Half) + 6, width, 1e-9);
  }
}

TEST(PageGrid, NothingTakesNoPage) { EXPECT_TRUE(arrangeRows({}, 240, 6).empty()); }

}  // namespace
}  // namespace creasewright
