#include "own_stock/stock_store.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include <gtest/gtest.h>

#include "output/write_bytes.h"

namespace creasewright {
namespace {

class StockStoreTest : public ::testing::Test {
 protected:
  void TearDown() override { QDir(folder()).removeRecursively(); }

  static QString folder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/stock");
  }
  const StockSheet linen_{"Linen", Length::inches(12), Length::inches(12)};
};

TEST_F(StockStoreTest, WhatIsMissingComesOnTheListOnce) {
  const std::size_t before = ownStock().size();
  ASSERT_GT(before, 0U);
  EXPECT_FALSE(addToOwnLists({linen_}, {}));
  EXPECT_FALSE(addToOwnLists({linen_}, {}));
  ASSERT_EQ(ownStock().size(), before + 1);
  EXPECT_EQ(ownStock().back().name, "Linen");
}

/// A table somebody broke with another program is not written over.
TEST_F(StockStoreTest, AnUnreadableListIsLeftAsItIs) {
  ASSERT_FALSE(addToOwnLists({linen_}, {}));
  const QByteArray broken = "name,width\nMine,wide\n";
  ASSERT_FALSE(writeBytes(folder() + QStringLiteral("/sheets.csv"), broken));
  const auto problem = addToOwnLists({linen_}, {});
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->code, ProblemCode::TableUnreadable);
  EXPECT_EQ(stockCsv(), broken);
}

}  // namespace
}  // namespace creasewright
