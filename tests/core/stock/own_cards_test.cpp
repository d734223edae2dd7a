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

/// Each colour is a card of its own, of ours too.
TEST(OwnCards, KeepTheirColours) {
  const auto sheet = [](const char* card, const char* colour, double weight) {
    StockSheet made;
    made.name = card;
    made.card = card;
    made.grammage = weight;
    made.colours = *parseCardColours(colour);
    return made;
  };
  const std::vector<Card> own = ownCards(
      {sheet("linen", "sage/cream", 200), sheet("linen", "plum", 200), sheet("linen", "plum", 200),
       sheet("card-220gsm", "sky", 0), sheet("card-220gsm", "plain", 0)});
  ASSERT_EQ(own.size(), 3U);
  EXPECT_EQ(own[0].colours, *parseCardColours("sage/cream"));
  EXPECT_EQ(own[1].colours, *parseCardColours("plum"));
  EXPECT_EQ(own[2].id, "card-220gsm");
  EXPECT_EQ(own[2].caliper, findCard("card-220gsm")->caliper);
  EXPECT_EQ(own[2].colours, *parseCardColours("sky"));
}

}  // namespace
}  // namespace creasewright
