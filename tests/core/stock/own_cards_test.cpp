#include "stock/own_cards.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

std::string nameOf(const std::string& sheet) {
  StockSheet stock;
  stock.card = "linen";
  stock.name = sheet;
  stock.grammage = 200;
  const std::vector<Card> cards = ownCards({stock});
  return cards.size() == 1 ? cards.front().name : "";
}

TEST(OwnCards, ACardIsNotCalledLikeASheetOfIt) {
  EXPECT_EQ(nameOf("Linen"), "Linen");
  EXPECT_EQ(nameOf("Linen, A4"), "Linen");
  EXPECT_EQ(nameOf("Linen, 12 x 12 in"), "Linen");
  EXPECT_EQ(nameOf("Linen, natural"), "Linen, natural");
  EXPECT_EQ(nameOf("A4"), "linen");
  EXPECT_EQ(nameOf("12 x 12 in"), "linen");
  EXPECT_EQ(nameOf(""), "linen");
}

}  // namespace
}  // namespace creasewright
