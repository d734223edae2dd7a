#include "session/places.h"

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "guide/make_guide.h"
#include "session/design_session.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

Place panel(const char* id) { return {.panels = {QString::fromLatin1(id)}}; }

TEST(Place, AFoldLightsWhatHasTheSameFoldAndAPanelWhatHasThePanel) {
  const Place fold{.piece = 0, .panels = {"base", "wall"}, .creases = {3}};
  EXPECT_TRUE(lights(fold, {.piece = 0, .panels = {"x"}, .creases = {1, 3}}));
  EXPECT_FALSE(lights(fold, {.piece = 0, .panels = {"base"}, .creases = {4}}));
  EXPECT_FALSE(lights(fold, {.piece = 1, .panels = {"x"}, .creases = {3}})) << "another piece";
  EXPECT_FALSE(lights(fold, panel("base"))) << "a fold is not its panels";
  EXPECT_TRUE(lights(panel("base"), fold)) << "but the fold is at the panel";
  EXPECT_TRUE(lights(panel("base"), {.piece = 1, .panels = {"base"}}));
  EXPECT_FALSE(lights(panel("base"), panel("wall")));
  const Place depth{.panels = {"wall"}, .measure = "depth"};
  EXPECT_TRUE(lights(fold, depth)) << "a measure moves the fold by the wall";
  EXPECT_FALSE(lights({.panels = {"wall"}, .measure = "width"}, depth));
}

TEST(Selection, WhatIsUnderTheMouseComesBeforeWhatIsKept) {
  Selection selection;
  int changes = 0;
  QObject::connect(&selection, &Selection::changed, [&] { ++changes; });
  selection.keep(panel("base"));
  selection.hover(panel("wall"));
  EXPECT_EQ(selection.lit(), panel("wall"));
  selection.hover({});
  EXPECT_EQ(selection.lit(), panel("base"));
  EXPECT_EQ(changes, 3);
  selection.keep(panel("base"));
  EXPECT_EQ(changes, 3) << "nothing has changed";
  selection.clear();
  EXPECT_TRUE(selection.lit().isEmpty());
  EXPECT_EQ(changes, 4);
}

TEST(Places, EveryCreaseAndPanelOfEveryStyleHasItsPlace) {
  DesignSession session;
  for (const Style& style : styles()) {
    changeStyle(session, style.id);
    const BuiltDesign& built = session.built();
    for (std::size_t p = 0; p < built.pieces.size(); ++p) {
      const Net& net = built.pieces[p].net;
      const auto piece = static_cast<int>(p);
      for (std::size_t i = 0; i < net.creases.size(); ++i) {
        const Place place = placeOfCreases(built, piece, {static_cast<int>(i)});
        EXPECT_FALSE(place.isEmpty());
        EXPECT_EQ(place.panels.size(), 2) << style.id;
        EXPECT_NEAR(place.progress * net.stageCount(), net.creases[i].stage, 1e-9) << style.id;
        if (net.creases[i].kind == CreaseKind::Flat) continue;
        const Place line = placeOfLines(built, piece, place.lines);
        EXPECT_EQ(std::ranges::count(line.creases, static_cast<int>(i)), 1) << style.id;
      }
      for (std::size_t i = 0; i < net.panels.size(); ++i) {
        const Place place = placeOfPanel(built, piece, static_cast<int>(i));
        EXPECT_TRUE(place.panels.contains(QString::fromStdString(net.panels[i].id)));
        EXPECT_TRUE(place.creases.empty());
      }
    }
    for (const Step& step : makeGuide(built).steps) {
      const Place place = placeOfStep(built, step);
      for (const Fold& fold : step.folds)
        EXPECT_EQ(std::ranges::count(place.creases, fold.crease) > 0, true) << style.id;
      EXPECT_GE(place.progress, 0);
      EXPECT_LE(place.progress, 1);
    }
  }
}

TEST(Places, AKeptThingFollowsTheDesignAndGoesWithTheStyle) {
  DesignSession session;
  session.selection().keep(placeOfCreases(session.built(), 0, {0}));
  const Segment before = session.selection().lit().lines.front();
  changeProduct(session, *parseProduct("box:140x60x22mm"));
  ASSERT_EQ(session.selection().lit().creases, std::vector<int>{0});
  const Segment after = session.selection().lit().lines.front();
  EXPECT_NE(before, after);
  EXPECT_EQ(after, session.built().pieces.front().flat.creases.front());
  changeStyle(session, "straight-tuck-box");
  EXPECT_TRUE(session.selection().lit().isEmpty());
}

}  // namespace
}  // namespace creasewright
