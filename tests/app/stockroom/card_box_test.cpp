#include "stockroom/card_box.h"

#include <QFile>
#include <QStandardPaths>

#include <gtest/gtest.h>

#include "own_stock/stock_store.h"

namespace creasewright {
namespace {

constexpr const char* kLinen = "name,card,caliper,width,height\nLinen,linen,0.31 mm,12 in,12 in\n";

class CardBoxTest : public ::testing::Test {
 protected:
  void SetUp() override { ASSERT_FALSE(saveStockCsv(kLinen)); }
  void TearDown() override {
    QFile::remove(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) +
                  QStringLiteral("/stock/sheets.csv"));
  }
};

TEST_F(CardBoxTest, OffersOurCardsAndThePersonsOwn) {
  CardBox box;
  EXPECT_EQ(box.count(), static_cast<int>(cards().size()) + 1);
  const int linen = box.findText(QStringLiteral("Linen"));
  ASSERT_GE(linen, 0);
  Card picked;
  QObject::connect(&box, &CardBox::cardPicked, [&](const Card& card) { picked = card; });
  emit box.activated(linen);
  EXPECT_EQ(picked.id, "linen");
  EXPECT_EQ(picked.caliper, Length::mm(0.31));
}

/// A card whose sheets tell a colour brings it; one without leaves the colours that there are.
TEST_F(CardBoxTest, AnOwnCardKeepsItsColours) {
  ASSERT_FALSE(
      saveStockCsv("name,card,caliper,width,height,colour\n"
                   "Linen,linen,0.31 mm,12 in,12 in,sage/cream\n"));
  CardBox box;
  const int linen = box.findText(QStringLiteral("Linen, sage, back cream"));
  ASSERT_GE(linen, 0);
  Card picked;
  QObject::connect(&box, &CardBox::cardPicked, [&](const Card& card) { picked = card; });
  emit box.activated(linen);
  const CardColours plum = *parseCardColours("plum");
  EXPECT_EQ(coloursOf(picked, plum), *parseCardColours("sage/cream"));
  EXPECT_EQ(coloursOf(cards()[0], plum), plum);
}

TEST_F(CardBoxTest, ACardOnNoListIsShownAndPicksNothing) {
  CardBox box;
  box.setCard({"0.5mm", "0.5 mm", Length::mm(0.5), 0}, QStringLiteral("Measured"));
  EXPECT_EQ(box.currentText(), QStringLiteral("Measured"));
  bool picked = false;
  QObject::connect(&box, &CardBox::cardPicked, [&](const Card&) { picked = true; });
  emit box.activated(box.currentIndex());
  EXPECT_FALSE(picked);
  box.setCard(cards()[1], QStringLiteral("Measured"));
  EXPECT_EQ(box.currentIndex(), 1);
}

}  // namespace
}  // namespace creasewright
