#include "document/suggest.h"

#include <algorithm>
#include <array>

#include <gtest/gtest.h>

#include "own_styles/keep_style.h"
#include "styles/registry.h"
#include "support/heart_box.h"

namespace creasewright {
namespace {

const Product kSoap{ProductShape::Box, Length::mm(89), Length::mm(64), Length::mm(25)};
const Card kCard{"test", "test card", Length::mm(0.3), 0};

Paper paper(std::string_view id) { return *findPaper(id); }

std::vector<Suggestion> soapSuggestions() {
  const std::array stock{paper("letter"), paper("12x12")};
  return suggest(kSoap, kCard, Ease::Easy, ToolGrid::sixteenthInch(), stock);
}

const Suggestion& styleIn(const std::vector<Suggestion>& all, std::string_view id) {
  return *std::ranges::find_if(all, [id](const Suggestion& s) { return s.style->id == id; });
}

TEST(Suggest, OffersEveryStyleOnce) {
  const auto all = soapSuggestions();
  ASSERT_EQ(all.size(), styles().size() + 1);
  EXPECT_EQ(all.back().style->id, "blank-sheet");
  for (const Style& style : styles())
    EXPECT_EQ(std::ranges::count(all, &style, &Suggestion::style), 1) << style.id;
}

bool isInsert(const Style& style) { return style.id.ends_with("-insert"); }

TEST(Suggest, StylesThatHoldAndFitASheetComeFirst) {
  auto all = soapSuggestions();
  all.pop_back();  // the blank sheet is last whatever it would take
  const auto rank = [](const Suggestion& s) { return (s.holds() ? 0 : 2) + !s.fitsAnySheet(); };
  EXPECT_TRUE(std::ranges::is_sorted(all, {}, rank));
  for (std::size_t i = 1; i < all.size(); ++i)
    if (rank(all[i - 1]) == rank(all[i]) &&
        isInsert(*all[i - 1].style) == isInsert(*all[i].style)) {
      EXPECT_LE(all[i - 1].cardArea, all[i].cardArea);
    }
}

TEST(Suggest, StylesForRoundThingsLeadForACylinder) {
  const Product jar{ProductShape::Cylinder, Length::mm(40), Length::mm(40), Length::mm(60)};
  const std::array stock{paper("12x18")};
  auto all = suggest(jar, kCard, Ease::Easy, ToolGrid::millimetre(), stock);
  all.pop_back();
  const auto late = [](const Suggestion& s) {
    return (s.holds() ? 0 : 4) + (s.fitsAnySheet() ? 0 : 2) + (s.style->traits.suitsRound ? 0 : 1);
  };
  EXPECT_TRUE(std::ranges::is_sorted(all, {}, late));
}

/// Counted by hand on the drawn net: a belly band has four scores (its lap is not scored) and the
/// four cuts of a rectangle; the lap is glued over the band's whole breadth.
/// A single box asks for a box, not for something to put into one.
TEST(Suggest, InsertsComeAfterBoxes) {
  const std::array stock{*findPaper("12x12")};
  const auto all = suggest(parseProduct("box:60x40x25mm").value(), cards().front(), Ease::Easy,
                           ToolGrid::sixteenthInch(), stock);
  const auto place = [&](std::string_view id) {
    return std::ranges::find(all, id, [](const Suggestion& s) { return s.style->id; }) -
           all.begin();
  };
  EXPECT_GT(place("partition-insert"), place("two-piece-box"));
  EXPECT_GT(place("platform-insert"), place("two-piece-box"));
}

TEST(Suggest, CountsTheWorkOfABellyBand) {
  const auto all = soapSuggestions();
  const Suggestion& band = styleIn(all, "belly-band");
  ASSERT_EQ(band.built.pieces.size(), 1u);
  const FlatNet& flat = band.built.pieces[0].flat;
  EXPECT_EQ(band.scores, 4);
  EXPECT_EQ(band.cuts, 4);
  EXPECT_DOUBLE_EQ(band.cardArea, flat.width * flat.height);
  EXPECT_TRUE(band.usesGlue());
  EXPECT_GT(band.glue.mm(), std::min(flat.width, flat.height) - 3);
  EXPECT_LT(band.glue.mm(), std::max(flat.width, flat.height));
}

TEST(Suggest, AWishKeepsOnlyWhatItAsksFor) {
  const auto all = soapSuggestions();
  const Suggestion& tray = styleIn(all, "framed-tray");
  EXPECT_TRUE(Wish{}.meets(tray));
  EXPECT_FALSE((Wish{.noGlue = true}.meets(tray)));
  EXPECT_EQ((Wish{.showsProduct = true}.meets(tray)), tray.style->traits.showsProduct);
  EXPECT_EQ((Wish{.onMySheet = true}.meets(tray)), tray.fitsAnySheet());
}

TEST(Suggest, OwnStylesStandAmongTheOthersAndThoseForOtherSizesAfterThem) {
  StyleWords words = testing::heartWords();
  words.suits.reset();
  const OwnStyle any = *keepStyle(testing::heartBox(), words);
  OwnStyle small = testing::heartStyle();
  small.suits->most = {Length::mm(31), Length::mm(21), Length::mm(41)};
  const std::array stock{paper("12x12")};
  const std::array own{small, any};
  const auto all = suggest(parseProduct("box:60x35x120mm").value(), kCard, Ease::Easy,
                           ToolGrid::millimetre(), stock, own);
  ASSERT_EQ(all.size(), styles().size() + 3);
  const auto place = [&](const OwnStyle& style) {
    return std::ranges::find(all, std::optional(style),
                             [](const Suggestion& s) { return s.built.design.ownStyle; }) -
           all.begin();
  };
  EXPECT_TRUE(all[static_cast<std::size_t>(place(any))].holds());
  EXPECT_LT(place(any), place(small));
  EXPECT_TRUE(all[static_cast<std::size_t>(place(small))].holds());
  for (auto i = static_cast<std::size_t>(place(small)) + 1; i + 1 < all.size(); ++i)
    EXPECT_FALSE(all[i].holds()) << all[i].style->id;
}

TEST(FitOnSheet, TriesBothWaysRound) {
  const Paper letter = paper("letter");  // 215.9 x 279.4 mm, ANSI/ASME Y14.1
  EXPECT_TRUE(fitOnSheet(letter, 215.9, 279.4).fits);
  EXPECT_FALSE(fitOnSheet(letter, 215.9, 279.4).turned);
  EXPECT_TRUE(fitOnSheet(letter, 279.4, 215.9).turned);
  EXPECT_FALSE(fitOnSheet(letter, 216, 280).fits);
  EXPECT_FALSE(fitOnSheet(letter, 280, 10).fits);
}

}  // namespace
}  // namespace creasewright
