#include "stockroom/stock_window.h"

#include <QFile>
#include <QPushButton>
#include <QStandardPaths>
#include <QTableWidget>
#include <algorithm>

#include <gtest/gtest.h>

#include "own_stock/stock_store.h"

namespace creasewright {
namespace {

class StockWindowTest : public ::testing::Test {
 protected:
  void TearDown() override { QFile::remove(path()); }

  static QString path() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/stock/sheets.csv");
  }
  static QTableWidget* sheetsOf(StockWindow& window) {
    const auto tables = window.findChildren<QTableWidget*>();
    return *std::find_if(tables.begin(), tables.end(), [](const QTableWidget* table) {
      return table->accessibleName() == QLatin1String("Sheets");
    });
  }
  static void press(StockWindow& window, const char* words) {
    for (auto* button : window.findChildren<QPushButton*>()) {
      if (button->text() == QLatin1String(words)) {
        button->click();
      }
    }
  }
  static int columnOf(const QTableWidget* table, const char* name) {
    for (int c = 0; c < table->columnCount(); ++c) {
      if (table->horizontalHeaderItem(c)->data(Qt::UserRole).toString() == QLatin1String(name)) {
        return c;
      }
    }
    return -1;
  }
};

/// A list saved by an earlier program has no columns for the card; they are there to fill in.
TEST_F(StockWindowTest, AnOldListGetsEveryColumn) {
  ASSERT_FALSE(saveStockCsv("name,width,height\nMine,12 in,12 in\n"));
  StockWindow window(Unit::Inch);
  QTableWidget* table = sheetsOf(window);
  const int caliper = columnOf(table, "caliper");
  ASSERT_GE(caliper, 0);
  table->item(0, caliper)->setText(QStringLiteral("0.4 mm"));
  press(window, "Save");
  EXPECT_EQ(window.result(), QDialog::Accepted);
  ASSERT_EQ(ownStock().size(), 1U);
  EXPECT_EQ(ownStock()[0].caliper, Length::mm(0.4));
  EXPECT_EQ(ownStock()[0].card, "Mine");
}

TEST_F(StockWindowTest, WhatCannotBeReadIsNotSaved) {
  ASSERT_FALSE(saveStockCsv("name,width,height\nMine,12 in,12 in\n"));
  StockWindow window(Unit::Inch);
  QTableWidget* table = sheetsOf(window);
  table->item(0, columnOf(table, "width"))->setText(QStringLiteral("wide"));
  press(window, "Save");
  EXPECT_NE(window.result(), QDialog::Accepted);
  EXPECT_EQ(ownStock().at(0).width, Length::inches(12));
}

}  // namespace
}  // namespace creasewright
