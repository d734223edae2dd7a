#include "pages/guide_figure.h"

#include <algorithm>

#include <gtest/gtest.h>

#include "core/laws/random_design.h"
#include "folding/motion/motion_check.h"
#include "guide/make_guide.h"
#include "pages/folded_figure.h"
#include "patterns/pattern.h"

namespace creasewright {
namespace {

double shownProgress(const BuiltPiece& piece, const Step& step) {
  const double share = shownShare(piece, step);
  return step.figure.progressFrom + share * (step.figure.progress - step.figure.progressFrom);
}

/// No picture of a fold step shows card going through card, also where the card bends: such steps
/// are shown before stiff panels meet.
TEST(GuideFigure, NoFoldStepShowsPanelsInOneAnother) {
  testing::Random random(92);
  int bent = 0;
  for (const Style& style : styles()) {
    for (int i = 0; i < 12; ++i) {
      auto design = testing::randomInsideLimits(random, style);
      if (i == 0)
        design = *newDesign(style.id, std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                            Ease::Easy, ToolGrid::none());
      if (!design) continue;
      const Result<BuiltDesign> built = build(*design);
      ASSERT_TRUE(built.ok()) << style.id;
      for (const Step& step : makeGuide(*built).steps) {
        if (step.code != StepCode::FoldStage) continue;
        const BuiltPiece& piece = built->pieces[static_cast<std::size_t>(step.piece)];
        EXPECT_FALSE(collidesAt(piece.net, piece.card.caliper.mm(), shownProgress(piece, step)))
            << style.id << ' ' << step.stage << ' ' << shownShare(piece, step);
        bent += step.bends.empty() ? 0 : 1;
      }
    }
  }
  EXPECT_GT(bent, 50);
}

/// The tabs that are fed into a rolled side are shown before they go in.
TEST(GuideFigure, TabsAreNotShownThroughTheRim) {
  Design design = *newDesign("framed-tray", std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::none());
  design.parameters.setCount("long-sides-first", 1);
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  const Guide guide = makeGuide(*built);
  const auto found = std::ranges::find(guide.steps, "raise-short-sides", &Step::stage);
  ASSERT_NE(found, guide.steps.end());
  const Step& last = *found;
  EXPECT_EQ(last.bends, std::vector{BendCode::TabsFedIn});
  EXPECT_EQ(shownShare(built->pieces[0], last), 0);
}

/// At half the way the inner walls of opposite sides lie in one plane, one through the other.
TEST(GuideFigure, DeepSidesAreShownBeforeTheyMeet) {
  Design design = *newDesign("framed-tray", std::nullopt, {"test", "test card", Length::mm(0.3), 0},
                             Ease::Easy, ToolGrid::none());
  design.parameters.set("depth", Length::inches(3));
  design.parameters.set("opening-width", Length::inches(1));
  const Result<BuiltDesign> built = build(design);
  ASSERT_TRUE(built.ok());
  int deep = 0;
  for (const Step& step : makeGuide(*built).steps) {
    if (step.bends.empty()) continue;
    ++deep;
    EXPECT_LT(shownShare(built->pieces[0], step), 0.2) << step.stage;
  }
  EXPECT_EQ(deep, 2);
}

/// A tray, pale red outside and pale green within, or with a pattern outside.
BuiltDesign redAndGreen(bool patterned) {
  Design design = *newDesign("framed-tray", parseProduct("box:89x64x25mm").value(), cards().front(),
                             Ease::Easy, ToolGrid::millimetre());
  design.card.colours.face = Colour{0xFA, 0xE0, 0xE0};
  design.card.colours.back = Colour{0xE0, 0xFA, 0xE0};
  if (patterned) design.card.colours.pattern = usualPaper(**findPattern("gingham"));
  return build(design).value();
}

std::optional<Colour> firstFill(const Drawing& drawing) {
  for (const PathItem& item : drawing.paths)
    if (item.role == Role::Face && item.filled) return item.colour;
  return std::nullopt;
}

/// Flat figures are in the colour of the side that is up: the face's where the sheet is turned.
TEST(GuideFigure, ATurnedSheetShowsTheOutsideOfTheCard) {
  const BuiltDesign built = redAndGreen(false);
  int turned = 0;
  int inside = 0;
  for (const Step& step : makeGuide(built).steps) {
    if (step.figure.kind != FigureKind::Sheet) continue;
    const CardColours& colours = built.design.card.colours;
    EXPECT_EQ(firstFill(guideFigure(built, step)),
              step.figure.turned ? colours.face : colours.back);
    ++(step.figure.turned ? turned : inside);
  }
  EXPECT_GT(turned, 0);
  EXPECT_GT(inside, 0);
}

/// Fold stages show the pattern where the finished gift shows it: every ink of it, and no ink on
/// the green side.
TEST(GuideFigure, FoldStagesShowThePatternOfTheCard) {
  const BuiltDesign built = redAndGreen(true);
  const std::vector<Colour> inks = coloursOf(*built.design.card.colours.pattern);
  const auto inksIn = [&](const Drawing& drawing) {
    std::size_t seen = 0;
    for (std::size_t i = 1; i < inks.size(); ++i)
      seen += std::ranges::any_of(drawing.paths, [&](const PathItem& item) {
        return item.printed && item.colour == inks[i] && item.surface == Surface::Outside;
      });
    return seen;
  };
  ASSERT_GT(inks.size(), 1u);
  ASSERT_EQ(inksIn(finishedFigure(built)), inks.size() - 1);
  int stages = 0;
  for (const Step& step : makeGuide(built).steps) {
    if (step.code != StepCode::FoldStage) continue;
    const Drawing figure = guideFigure(built, step);
    EXPECT_EQ(inksIn(figure), inks.size() - 1) << step.stage;
    for (const PathItem& item : figure.paths)
      EXPECT_FALSE(item.printed && item.surface == Surface::Inside) << step.stage;
    ++stages;
  }
  EXPECT_GT(stages, 1);
}

}  // namespace
}  // namespace creasewright
