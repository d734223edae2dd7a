#include "stockroom/stock_window.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTableWidget>
#include <algorithm>

#include <gtest/gtest.h>

#include "output/write_bytes.h"
#include "own_stock/stock_store.h"

namespace creasewright {
namespace {

class StockWindowTest : public ::testing::Test {
 protected:
  void SetUp() override { QDir().mkpath(QFileInfo(path()).path()); }
  void TearDown() override {
    QFile::remove(path());
    QFile::remove(punches());
  }

  static QString path() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/stock/sheets.csv");
  }
  static QString punches() {
    return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
           QStringLiteral("/stock/punches.csv");
  }
  static QTableWidget* tableOf(StockWindow& window, const char* name) {
    const auto tables = window.findChildren<QTableWidget*>();
    return *std::find_if(tables.begin(), tables.end(), [&](const QTableWidget* table) {
      return table->accessibleName() == QLatin1String(name);
    });
  }
  static QTableWidget* sheetsOf(StockWindow& window) { return tableOf(window, "Sheets"); }
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

/// Punches are entered by shape and size, in inches or millimetres, and kept beside the sheets.
TEST_F(StockWindowTest, PunchesAreEnteredAndKept) {
  QFile::remove(punches());
  {
    StockWindow window(Unit::Inch);
    QTableWidget* table = tableOf(window, "Punches");
    window.findChild<QTabWidget*>()->setCurrentWidget(table);
    ASSERT_EQ(table->rowCount(), 0);
    EXPECT_TRUE(std::ranges::any_of(window.findChildren<QLabel*>(), [](const QLabel* label) {
      return label->text().contains(QStringLiteral("each punch"));
    }));
    press(window, "Add row");
    press(window, "Add row");
    const auto shape = [&](int row) {
      return qobject_cast<QComboBox*>(table->cellWidget(row, columnOf(table, "shape")));
    };
    EXPECT_GE(table->columnWidth(columnOf(table, "shape")), shape(0)->sizeHint().width());
    shape(0)->setCurrentText(QStringLiteral("Scalloped circle"));
    table->setItem(0, columnOf(table, "width"), new QTableWidgetItem(QStringLiteral("1 3/8 in")));
    shape(1)->setCurrentText(QStringLiteral("Circle"));
    table->setItem(1, columnOf(table, "width"), new QTableWidgetItem(QStringLiteral("50 mm")));
    press(window, "Save");
    EXPECT_EQ(window.result(), QDialog::Accepted);
  }
  const auto own = ownPunches();
  ASSERT_TRUE(own);
  EXPECT_EQ(*own, (std::vector<Punch>{
                      {LabelShape::ScallopedCircle, Length::inches(11, 8), Length::inches(11, 8)},
                      {LabelShape::Circle, Length::mm(50), Length::mm(50)}}));
  StockWindow again(Unit::Millimetre);
  EXPECT_EQ(tableOf(again, "Punches")->rowCount(), 2);
  QFile::remove(punches());
}

TEST_F(StockWindowTest, AnUnreadableListOfPunchesIsTold) {
  ASSERT_FALSE(writeBytes(punches(), QByteArray("shape,width\ncloud,1 in\n")));
  StockWindow window(Unit::Inch);
  bool told = false;
  for (const QLabel* label : window.findChildren<QLabel*>())
    told = told || label->text().contains(QStringLiteral("cloud"));
  EXPECT_TRUE(told);
  press(window, "Save");
  EXPECT_NE(window.result(), QDialog::Accepted);
  QFile file(punches());
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_EQ(file.readAll(), "shape,width\ncloud,1 in\n");  // nothing is lost
  file.close();
  QFile::remove(punches());
}

}  // namespace
}  // namespace creasewright
