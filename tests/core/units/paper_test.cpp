#include "units/paper.h"

#include <fstream>
#include <set>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "units/length_text.h"

namespace creasewright {
namespace {

void expectSize(const char* id, Length width, Length height) {
  const Result<Paper> paper = findPaper(id);
  ASSERT_TRUE(paper.ok()) << id;
  EXPECT_EQ(paper->width, width) << id;
  EXPECT_EQ(paper->height, height) << id;
}

// Source: ISO 216, A series, trimmed sizes in mm (read).
TEST(Paper, ASeriesAsInIso216) {
  expectSize("a3", Length::mm(297), Length::mm(420));
  expectSize("a4", Length::mm(210), Length::mm(297));
  expectSize("a5", Length::mm(148), Length::mm(210));
  expectSize("a6", Length::mm(105), Length::mm(148));
}

// Source: ISO 217, supplementary raw sizes in mm (read).
TEST(Paper, RawSizesAsInIso217) {
  expectSize("sra3", Length::mm(320), Length::mm(450));
  expectSize("sra4", Length::mm(225), Length::mm(320));
}

// Source: ANSI/ASME Y14.1 and PWG 5101.1 (read): 8.5 x 11, 8.5 x 14, 11 x 17 in; in mm 215.9 x
// 279.4, 215.9 x 355.6, 279.4 x 431.8.
TEST(Paper, OfficeSizesAsInAnsi) {
  expectSize("letter", Length::mm(215.9), Length::mm(279.4));
  expectSize("legal", Length::mm(215.9), Length::mm(355.6));
  expectSize("tabloid", Length::mm(279.4), Length::mm(431.8));
}

// Source: PWG 5101.1 (read): 304.8 x 457.2, 127 x 177.8 mm.
TEST(Paper, PhotoAndArchSizesAsInPwg) {
  expectSize("12x18", Length::mm(304.8), Length::mm(457.2));
  expectSize("5x7", Length::mm(127), Length::mm(177.8));
}

// Common practice, no published source: 12, 8 and 6 in square.
TEST(Paper, CraftSquares) {
  expectSize("12x12", Length::mm(304.8), Length::mm(304.8));
  expectSize("8x8", Length::mm(203.2), Length::mm(203.2));
  expectSize("6x6", Length::mm(152.4), Length::mm(152.4));
}

TEST(Paper, AllUprightWithTheirOwnIds) {
  std::set<std::string_view> ids;
  for (const Paper& paper : papers()) {
    EXPECT_LE(paper.width, paper.height) << paper.id;
    EXPECT_TRUE(ids.insert(paper.id).second) << paper.id;
    EXPECT_EQ(findPaper(paper.id)->name, paper.name);
  }
  EXPECT_EQ(ids.size(), 14u);
}

TEST(Paper, CapitalsDoNotMatterAndUnknownIdsAreNamed) {
  EXPECT_EQ(findPaper("A4")->id, "a4");
  EXPECT_EQ(findPaper("Letter")->id, "letter");
  for (const char* id : {"", "a", "a44", "a4 ", "b4"}) {
    const Result<Paper> paper = findPaper(id);
    ASSERT_FALSE(paper.ok()) << id;
    EXPECT_EQ(paper.problem(), (Problem{ProblemCode::PaperUnknown, {}, {std::string(id)}}));
  }
}

/// resources/papers.json lists the same sizes in the same order, each with its source.
TEST(Paper, TableMatchesTheResource) {
  std::ifstream file(CREASEWRIGHT_SOURCE_DIR "/resources/papers.json");
  const auto json = nlohmann::json::parse(file, nullptr, false);
  ASSERT_TRUE(json.is_object());
  const auto& rows = json["papers"];
  ASSERT_EQ(rows.size(), papers().size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Paper& paper = papers()[i];
    EXPECT_EQ(rows[i]["id"], paper.id);
    EXPECT_EQ(rows[i]["name"], paper.name);
    EXPECT_EQ(*parseLength(std::string(rows[i]["width"]), Unit::Millimetre), paper.width);
    EXPECT_EQ(*parseLength(std::string(rows[i]["height"]), Unit::Millimetre), paper.height);
    EXPECT_FALSE(std::string(rows[i]["source"]).empty());
  }
}

TEST(Paper, OnesOwnIsNamedByItsSidesAndLiesUpright) {
  const Paper own = ownPaper(Length::mm(250), Length::mm(200.5));
  EXPECT_EQ(own.name, "200.5 x 250 mm");
  EXPECT_EQ(own.width, Length::mm(200.5));
  EXPECT_EQ(own.height, Length::mm(250));
  EXPECT_EQ(ownPaper(Length::mm(200.5), Length::mm(250)).name, own.name);
}

}  // namespace
}  // namespace creasewright
