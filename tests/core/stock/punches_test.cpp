#include "stock/punches.h"

#include <gtest/gtest.h>

#include "document/build.h"
#include "document/with_punches.h"
#include "extras/layer_stack.h"
#include "kits/build_kit.h"

namespace creasewright {
namespace {

constexpr std::string_view kOwned =
    "shape,width,height\ncircle,1 in,\ncircle,1 3/8 in,\ncircle,2 in,\nscalloped circle,2 3/8 in,\n"
    "rectangle,63.5 mm,15.9 mm\n";

// The sizes of punches in inches are exact in millimetres: 1 3/8 in is 34.925 mm.
TEST(Punches, AreReadInInchesAndMillimetres) {
  const auto punches = readPunchTable(kOwned, "punches.csv");
  ASSERT_TRUE(punches) << punches.problem().where;
  ASSERT_EQ(punches->size(), 5U);
  EXPECT_EQ(punches->at(1), (Punch{LabelShape::Circle, Length::mm(34.925), Length::mm(34.925)}));
  EXPECT_EQ(punches->at(4).height, Length::mm(15.9));
}

TEST(Punches, NonsenseIsOneProblemThatNamesTheRow) {
  for (const char* row :
       {"cloud,1 in,", "circle,far,", "circle,0 mm,", "circle,10 km,", "circle,,"}) {
    const auto read =
        readPunchTable("shape,width,height\ncircle,1 in,\n" + std::string(row) + "\n", "p");
    ASSERT_FALSE(read) << row;
    EXPECT_EQ(read.problem().code, ProblemCode::TableUnreadable) << row;
    EXPECT_EQ(std::get<std::int64_t>(read.problem().values.at(0)), 3) << row;
  }
}

/// Bytes that are no text, a column of something else, and a circle with two measures were taken
/// in silence.
TEST(Punches, WhatIsNoPunchIsSaid) {
  using namespace std::string_view_literals;
  EXPECT_EQ(readPunchTable("\0\x01\xff\xfe\0"sv, "p").problem(),
            (Problem{ProblemCode::TableNoText, "p", {}}));
  EXPECT_EQ(readPunchTable("shape,width,hight\ncircle,1 in,\n", "p").problem().code,
            ProblemCode::ColumnUnknown);
  for (const char* shape : {"circle", "scalloped circle"}) {
    const auto read = readPunchTable(
        "shape,width,height\ncircle,1 in,1 in\n" + std::string(shape) + ",2 in,3 in\n", "p");
    ASSERT_FALSE(read) << shape;
    EXPECT_EQ(
        read.problem(),
        (Problem{ProblemCode::PunchNotRound,
                 "p",
                 {std::int64_t{3}, std::string(shape), std::string("2 in"), std::string("3 in")}}));
  }
  EXPECT_TRUE(readPunchTable("shape,width,height\noval,2 in,3 in\n", "p"));
}

TEST(Punches, LayersTakeTheLargestThatStaysOnWhatIsUnderThemElseAreCut) {
  const auto punches = *readPunchTable(kOwned, "punches.csv");
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:90x50x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {standardExtra(**findExtraKind("label"), design.card)};
  Extra& label = design.extras[0];
  label.parameters.setCount("mat", 0);
  label.parameters.setCount("punched", 1);
  label.parameters.setCount("shape", static_cast<int>(LabelShape::ScallopedCircle));
  label.parameters.set("width", Length::mm(62));
  label.layers = {standardLayer(design.card), standardLayer(design.card)};
  label.layers[0].parameters.setCount("shape", static_cast<int>(LabelShape::Circle));
  label.layers[1].parameters.setCount("shape", static_cast<int>(LabelShape::Heart));
  for (ExtraLayer& layer : label.layers) layer.parameters.setCount("punched", 1);
  const Design snapped = withPunches(design, punches);
  const Extra& made = snapped.extras[0];
  EXPECT_EQ(made.parameters.length("width"), Length::mm(60.325));
  EXPECT_EQ(made.layers[0].parameters.length("width"), Length::mm(34.925));
  EXPECT_TRUE(made.layers[0].parameters.flag("punched"));
  EXPECT_FALSE(made.layers[1].parameters.flag("punched"));  // no heart is owned: it is cut
  EXPECT_TRUE(onlyWarnings(build(snapped)->problems));
  EXPECT_EQ(withPunches(snapped, punches), snapped);
}

/// A piece is punched out of a blank that is larger all round, and named by the punch.
TEST(Punches, APunchedPieceComesOutOfALargerBlank) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:90x50x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {standardExtra(**findExtraKind("label"), design.card)};
  Extra& label = design.extras[0];
  label.parameters.setCount("punched", 1);
  label.parameters.setCount("shape", static_cast<int>(LabelShape::Circle));
  label.parameters.set("width", Length::inches(2));
  label.parameters.setCount("mat", 1);  // a layer under it, which is cut
  label.layers = {standardLayer(design.card), standardLayer(design.card)};
  label.layers[1].parameters.setCount("shape", static_cast<int>(LabelShape::Heart));
  label.layers[1].parameters.setCount("punched", 1);
  const BuiltDesign built = *build(design);
  std::vector<LabelShape> punched;
  for (const BuiltPiece& piece : built.pieces) {
    const auto [width, height] = blankSize(piece);
    const std::optional<Punch> punch = punchFor(built, piece);
    if (!punch) {
      EXPECT_EQ(width, Length::mm(piece.flat.width)) << piece.name;
      continue;
    }
    punched.push_back(punch->shape);
    EXPECT_NEAR((width - punch->width).mm(), 6, 0.001) << piece.name;
    EXPECT_NEAR((height - punch->height).mm(), 6, 0.001) << piece.name;
    EXPECT_EQ(blankOf(built, piece, "", 1).width, width) << piece.name;
  }
  EXPECT_EQ(punched, (std::vector{LabelShape::Circle, LabelShape::Heart}));
  EXPECT_EQ(punchesFor(built).at(0),
            (Punch{LabelShape::Circle, Length::inches(2), Length::inches(2)}));
}

TEST(Punches, ATableReadsBackAsItWasWritten) {
  const auto punches = *readPunchTable(kOwned, "punches.csv");
  const auto again = readPunchTable(writePunchTable(punches), "punches.csv");
  ASSERT_TRUE(again) << again.problem().where;
  EXPECT_EQ(*again, punches);
  for (int shape = 0; shape < static_cast<int>(shapeWords().size()); ++shape) {
    const auto of = static_cast<LabelShape>(shape);
    const std::vector<Punch> one{{of, Length::mm(20), Length::mm(isRound(of) ? 20 : 30)}};
    const auto read = readPunchTable(writePunchTable(one), "p");
    ASSERT_TRUE(read) << shape;
    EXPECT_EQ(*read, one);
  }
}

}  // namespace
}  // namespace creasewright
