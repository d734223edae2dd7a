#include "bridge/stock_words.h"

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "own_stock/stock_store.h"

namespace creasewright {
namespace {

class StockWords : public ::testing::Test {
 protected:
  StockWords() { useLanguage(QStringLiteral("de")); }
  ~StockWords() override { useLanguage(QStringLiteral("en")); }
};

/// Sizes and numbers are the same in every language: "A4", "12 x 12 in", "SRA3".
bool isOnlyASize(const std::string& name) {
  return name.find_first_of("0123456789") != std::string::npos && name.find("ard") > name.size() &&
         name.find("aper") > name.size() && name.find("lb") > name.size() &&
         name.find("tape") > name.size() && name.find("pt") > name.size() &&
         name.find("ibbon") > name.size();
}

TEST_F(StockWords, WhatComesWithTheProgramHasAGermanName) {
  for (const Card& card : cards()) EXPECT_NE(cardName(card).toStdString(), card.name);
  for (const SupplyItem& item : ownSupplies())
    EXPECT_NE(stockName(item.name).toStdString(), item.name);
  int sizes = 0;
  for (const StockSheet& sheet : ownStock()) {
    if (isOnlyASize(sheet.name) || sheet.name == "Letter") {
      ++sizes;
      continue;
    }
    EXPECT_NE(stockName(sheet.name).toStdString(), sheet.name);
  }
  EXPECT_GT(sizes, 3);
}

TEST_F(StockWords, APersonsOwnNamesStandAsTheyAreWritten) {
  EXPECT_EQ(stockName("Omas Tapete, rot"), "Omas Tapete, rot");
  EXPECT_EQ(stockName(""), "");
}

}  // namespace
}  // namespace creasewright
