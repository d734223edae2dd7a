#include "stock/stock_list.h"

#include <gtest/gtest.h>

#include "document/file_io.h"
#include "stock/csv.h"
#include "stock/own_cards.h"

namespace creasewright {
namespace {

TEST(Csv, QuotesSeparatorsAndLineEndsAreKept) {
  const CsvTable table{{"code", "name"}, {{"a", "two, \"three\"\nlines"}, {"", "; semi"}}};
  const Result<CsvTable> read = readCsv(writeCsv(table), "t.csv");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read->columns, table.columns);
  EXPECT_EQ(read->rows, table.rows);
}

TEST(Csv, TheLastRowNeedsNoLineEnd) {
  const Result<CsvTable> read = readCsv("a,b\r\n1,2\r\n3,four", "t.csv");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read->rows, (std::vector<std::vector<std::string>>{{"1", "2"}, {"3", "four"}}));
}

TEST(Csv, ARowOfAnotherLengthIsNamed) {
  const Result<CsvTable> read = readCsv("a,b\n1,2\n3\n", "t.csv");
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.problem(),
            (Problem{ProblemCode::TableUnreadable, "t.csv", {std::int64_t{3}, std::string("3")}}));
  EXPECT_FALSE(readCsv("a,\"b\n1,2\n", "t.csv").ok());
  EXPECT_FALSE(readCsv("", "t.csv").ok());
}

TEST(StockList, ATableReadsBackTheSame) {
  const Result<std::vector<StockSheet>> stock = readStockTable(
      "NAME;width;height;price;grain;pattern;at_hand;limit;code;card\n"
      "Kraft;12 in;12 in;0,45;long;1;20;1;K12;cover-65lb\n"
      "A4;210 mm;297 mm;;;;;;;\n",
      "t.csv");
  ASSERT_TRUE(stock.ok());
  ASSERT_EQ(stock->size(), 2U);
  const StockSheet& kraft = stock->front();
  EXPECT_EQ(kraft.width, Length::inches(12));
  EXPECT_EQ(kraft.price, 45);
  EXPECT_EQ(kraft.grain, Grain::Long);
  EXPECT_TRUE(kraft.pattern);
  EXPECT_EQ(kraft.owned, 20);
  EXPECT_EQ(kraft.atHand, 20);
  EXPECT_EQ((*stock)[1].atHand, -1);
  EXPECT_EQ(writeStockTable(*readStockTable(writeStockTable(*stock), "t")),
            writeStockTable(*stock));
}

/// A person's own card: by its weight as sold, by its thickness, by either; ours stay ours.
TEST(StockList, ASheetTellsItsCard) {
  const Result<std::vector<StockSheet>> stock = readStockTable(
      "name,card,basis,grammage,caliper,sides,width,height\n"
      "Linen card,linen,80 lb cover,,0.31 mm,1,12 in,12 in\n"
      "Linen card large,linen,80 lb cover,,0.31 mm,1,12 in,18 in\n"
      "Thin paper,,,90,,2,210 mm,297 mm\n"
      "Plain,,,,,,8 in,8 in\n"
      "Ours,cover-65lb,,,,,8 in,8 in\n",
      "t.csv");
  ASSERT_TRUE(stock.ok());
  EXPECT_EQ((*stock)[0].grammage, 216);  // HP LaserJet 5550 manual, Table 1-23
  EXPECT_TRUE((*stock)[0].oneSided);
  EXPECT_FALSE((*stock)[2].oneSided);
  EXPECT_EQ((*stock)[2].card, "Thin paper");
  const std::vector<Card> own = ownCards(*stock);
  ASSERT_EQ(own.size(), 2U);
  EXPECT_EQ(own[0], (Card{"linen", "Linen card", Length::mm(0.31), 216}));
  EXPECT_EQ(own[1].caliper, Length::mm(90 * 1.35 / 1000));
  EXPECT_EQ(findCard("linen", *stock)->name, "Linen card");
  EXPECT_EQ(findCard("0.4mm", *stock)->caliper, Length::mm(0.4));
  EXPECT_EQ(findCard("felt", *stock).problem().code, ProblemCode::CardUnknown);
  const Result<std::vector<StockSheet>> again = readStockTable(writeStockTable(*stock), "t");
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(ownCards(*again), own);
  EXPECT_EQ(writeStockTable(*again), writeStockTable(*stock));
}

TEST(StockList, ASheetTellsItsColours) {
  const Result<std::vector<StockSheet>> stock = readStockTable(
      "name,width,height,colour\nSage A3,297 mm,420 mm,sage\nTwo,297 mm,420 mm,plum/#F6ECD0\n"
      "Any,297 mm,420 mm,\nWhite,297 mm,420 mm,plain\n",
      "t.csv");
  ASSERT_TRUE(stock);
  EXPECT_EQ((*stock)[0].colours, *parseCardColours("sage"));
  EXPECT_EQ((*stock)[1].colours, *parseCardColours("plum/cream"));
  EXPECT_EQ((*stock)[2].colours, CardColours());
  EXPECT_EQ((*stock)[3].colours, CardColours());
  EXPECT_EQ(*readStockTable(writeStockTable(*stock), "t"), *stock);
}

TEST(StockList, AColourThatIsNoneIsNamedWithItsRow) {
  const auto stock = readStockTable(
      "name,width,height,colour\nA,1 in,1 in,sage\nB,1 in,1 in,sage/crem\n", "t.csv");
  ASSERT_FALSE(stock);
  EXPECT_EQ(stock.problem().code, ProblemCode::RowColour);
  EXPECT_EQ(stock.problem().where, "t.csv");
  ASSERT_GE(stock.problem().values.size(), 3U);
  EXPECT_EQ(std::get<std::int64_t>(stock.problem().values[0]), 3);
  EXPECT_EQ(std::get<std::string>(stock.problem().values[1]), "crem");
  EXPECT_EQ(std::get<std::string>(stock.problem().values[2]), "cream");
}

/// A column that nobody reads was swallowed in silence.
TEST(StockList, AColumnThatIsNotKnownIsNamed) {
  for (const Problem& problem :
       {readStockTable("name,width,height,color\nA,1 in,1 in,sage\n", "t.csv").problem(),
        readSupplyTable("name,kind,width,length,color\nT,tape,6 mm,25 m,red\n", "t.csv")
            .problem()}) {
    EXPECT_EQ(problem.code, ProblemCode::ColumnUnknown);
    EXPECT_EQ(problem.where, "t.csv");
    EXPECT_EQ(std::get<std::string>(problem.values.at(0)), "color");
  }
}

TEST(Csv, BytesThatNoTextHasAreNoTable) {
  using namespace std::string_view_literals;
  EXPECT_EQ(readCsv("a,b\n1,\0\n"sv, "t.csv").problem(),
            (Problem{ProblemCode::TableNoText, "t.csv", {}}));
}

TEST(StockList, ACardThatMakesNoSenseIsNamed) {
  const auto refused = [](const std::string& columns, const std::string& fields) {
    const auto stock =
        readStockTable("name,width,height," + columns + "\nA,1 in,1 in," + fields + "\n", "t");
    return stock.ok() ? std::string() : std::get<std::string>(stock.problem().values.at(1));
  };
  EXPECT_EQ(refused("basis", "80 lb"), "80 lb");  // 80 lb of what?
  EXPECT_EQ(refused("basis", "heavy"), "heavy");
  EXPECT_EQ(refused("caliper", "5 mm"), "5 mm");
  EXPECT_EQ(refused("grammage", "many"), "many");
  EXPECT_EQ(refused("sides", "3"), "3");
}

TEST(StockList, WhatCannotBeReadIsNamedByItsRow) {
  const Result<std::vector<StockSheet>> stock =
      readStockTable("name,width,height\nA4,210 mm,297 mm\nWide,far,1 in\n", "t.csv");
  ASSERT_FALSE(stock.ok());
  EXPECT_EQ(
      stock.problem(),
      (Problem{ProblemCode::TableUnreadable, "t.csv", {std::int64_t{3}, std::string("far")}}));
  for (const char* dots : {"adhesive-dots", "glue-dots"})
    EXPECT_EQ(readSupplyTable(std::string("name,kind\nDots,") + dots + "\n", "t")->front().kind,
              SupplyItemKind::AdhesiveDots);
  EXPECT_FALSE(readSupplyTable("name,kind,width,length\nX,rope,1 in,2 m\n", "t").ok());
  EXPECT_FALSE(readSupplyTable("name,kind\nTape,tape\n", "t").ok());
}

TEST(StockList, TheTablesThatComeWithTheProgramCanBeRead) {
  const std::string folder = CREASEWRIGHT_SOURCE_DIR "/resources/stock/";
  const auto sheets =
      readStockTable(readFile(folder + "sheets.csv", 1 << 20).value(), "sheets.csv");
  const auto supplies =
      readSupplyTable(readFile(folder + "supplies.csv", 1 << 20).value(), "supplies.csv");
  ASSERT_TRUE(sheets.ok());
  ASSERT_TRUE(supplies.ok());
  EXPECT_GE(sheets->size(), 9U);
  // A roll of 27 yd: 27 x 914.4 mm.
  EXPECT_EQ(supplies->front().length, Length::mm(27 * 914.4));
  EXPECT_EQ(supplies->front().width, Length::inches(1, 8));
}

TEST(StockList, OnlyWhatIsMissingIsAdded) {
  std::vector<StockSheet> list{{"Linen", Length::inches(12), Length::inches(12)}};
  EXPECT_EQ(addMissing({list[0], {"Linen", Length::inches(12), Length::inches(18)}}, list), 1);
  EXPECT_EQ(list.size(), 2U);
  std::vector<SupplyItem> supplies;
  const SupplyItem tape{"T", "Tape", SupplyItemKind::Tape, Length::mm(6), Length::mm(25000)};
  EXPECT_EQ(addMissing({tape, tape}, supplies), 1);
}

}  // namespace
}  // namespace creasewright
