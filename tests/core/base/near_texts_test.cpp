#include "base/near_texts.h"

#include <gtest/gtest.h>

#include "fit/card.h"

namespace creasewright {
namespace {

using Ids = std::vector<std::string>;

Ids nearCards(std::string_view written) {
  std::vector<Spelled> known;
  for (const Card& card : cards()) known.push_back({card.id, card.name});
  return nearTexts(written, known, 3);
}

TEST(NearTexts, AMistypedNameFindsTheOneThatWasMeant) {
  EXPECT_EQ(nearCards("cover80").front(), "cover-80lb");
  EXPECT_EQ(nearCards("300 gram card").front(), "card-300gsm");
  EXPECT_EQ(nearCards("gray board").front(), "grey-board-1.5mm");
  EXPECT_EQ(nearCards("INDEX_110_LB").front(), "index-110lb");
  EXPECT_LE(nearCards("cover").size(), 3U);
}

TEST(NearTexts, NothingLikeItNamesNothing) {
  EXPECT_EQ(nearCards("velvet"), Ids{});
  EXPECT_EQ(nearCards(""), Ids{});
  EXPECT_EQ(nearCards(std::string(100'000, '?')), Ids{});
}

}  // namespace
}  // namespace creasewright
