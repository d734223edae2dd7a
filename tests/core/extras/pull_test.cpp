#include <cmath>
#include <numbers>

#include "core/extras/built_extras.h"
#include "guide/make_guide.h"
#include "pages/gift.h"
#include "support/pierced.h"

// Ribbons to pull by, judged in space.

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::fitted;

Extra somePull(testing::Random& random, const Design& design) {
  Extra pull = extraOf("ribbon-pull", design);
  pull.parameters.setCount("holes", random.whole(0, 2));
  pull.parameters.set("reach", Length::mm(random.whole(12, 40)));
  pull.parameters.set("spacing", Length::mm(random.whole(9, 25)));
  pull.parameters.setCount("ends", random.whole(0, 1));
  return pull;
}

/// Where a panel of a piece of the box stands in a scene.
Transform panelIn(const GiftScene& scene, int piece, int panel) {
  for (std::size_t i = 0; i < scene.shown.owners.size(); ++i)
    if (scene.shown.owners[i].piece == piece && scene.shown.owners[i].panel == panel)
      return scene.shown.pose[i];
  ADD_FAILURE() << "no such panel";
  return {};
}

/// How long the middle lines of the ribbon's strips outside the face are together.
double drawnOutside(const GiftScene& scene, const Transform& face, double& farthest) {
  double length = 0;
  for (std::size_t i = 0; i < scene.shown.owners.size(); ++i) {
    if (scene.shown.owners[i].piece >= 0) continue;
    const Polygon& strip = scene.shown.net.panels[i].outline;
    const auto at = [&](Point a, Point b) {
      return face.inverse().apply(scene.shown.pose[i].apply((a + b) / 2));
    };
    if (at(strip[0], strip[2]).z > 0 || strip.size() != 4) continue;
    length += distance(at(strip[0], strip[1]), at(strip[2], strip[3]));
    for (const Point& p : strip)
      farthest = std::max(farthest, -face.inverse().apply(scene.shown.pose[i].apply(p)).z);
  }
  return length;
}

void expectHoles(const BuiltDesign& whole, const RibbonPull& pull) {
  const Panel& panel = whole.pieces.at(static_cast<std::size_t>(pull.face.piece))
                           .net.panels.at(static_cast<std::size_t>(pull.face.panel));
  for (int k = 0; k < pull.holes; ++k) {
    const Point3 there =
        pull.face.place.apply(Point3{pull.spacing * (k - (pull.holes - 1) / 2.0), 0, 0});
    const Point middle{there.x, there.y};
    EXPECT_EQ(locate(middle, panel.outline), Side::Inside);
    EXPECT_TRUE(std::ranges::any_of(
        panel.openings, [&](const Polygon& hole) { return locate(middle, hole) == Side::Inside; }));
  }
}

// Law: the loop stands out of its face as long as it is taut, goes through no card, and the ribbon
// to cut is long enough for it, for both ends and for the card.
TEST(RibbonPull, StandsOutOfItsFaceAndItsRibbonIsLongEnough) {
  testing::Random random(191);
  int drawn = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 3; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      Design design = fitted(random, style);
      design.extras = {somePull(random, design)};
      const BuiltDesign whole = built(design);
      if (whole.ribbons.empty()) {
        EXPECT_FALSE(whole.problems.empty());
        continue;
      }
      const RibbonNeed& need = whole.ribbons.front();
      ASSERT_TRUE(need.pull);
      const RibbonPull& pull = *need.pull;
      expectHoles(whole, pull);
      const double half = pull.holes == 2 ? design.extras[0].parameters.mm("spacing") / 2 : 0;
      const double reach = design.extras[0].parameters.mm("reach");
      const double taut = 2 * std::sqrt(reach * reach + half * half);
      const double least = taut + 2 * pull.end + 2 * design.card.caliper.mm();
      EXPECT_GE(need.length.mm(), least - 1e-6);
      EXPECT_LT(need.length.mm(), least + 13);
      EXPECT_GE(pull.end, pull.taped ? 20 : 4 * need.width.mm());
      const Gift gift(whole);
      const GiftScene scene = gift.at({});
      const Transform face = panelIn(scene, pull.face.piece, pull.face.panel);
      double farthest = 0;
      EXPECT_NEAR(drawnOutside(scene, face, farthest), taut, 0.02 * taut);
      EXPECT_GT(farthest, 0.6 * reach);
      EXPECT_LT(farthest, reach + 1);
      ++drawn;
      for (std::size_t i = 0; i < scene.shown.owners.size(); ++i)
        for (std::size_t k = 0; k < scene.shown.owners.size(); ++k) {
          if (scene.shown.owners[i].piece >= 0 || scene.shown.owners[k].piece < 0) continue;
          // Its ends are soft and lie where they find room.
          if (face.inverse().apply(scene.shown.pose[i].apply(Point{})).z > 0) continue;
          EXPECT_FALSE(testing::panelsCut(scene.shown.net.panels[i], scene.shown.pose[i],
                                          scene.shown.net.panels[k], scene.shown.pose[k], 0.5))
              << scene.shown.net.panels[k].id;
        }
    }
  EXPECT_GT(drawn, 30);
}

Design drawer(const char* face) {
  Design design = *newDesign("drawer-box", *parseProduct("box:110x80x50mm"), *findCard("300gsm"),
                             Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("ribbon-pull", design)};
  design.extras[0].face = face;
  return design;
}

// A drawer comes out on the side where it is pulled, and the loop with it.
TEST(RibbonPull, TheDrawerComesOutWhereItIsPulled) {
  for (const char* face : {"tray:base/left", "tray:base/right"}) {
    const BuiltDesign whole = built(drawer(face));
    ASSERT_TRUE(whole.problems.empty()) << face;
    const RibbonPull& pull = *whole.ribbons.at(0).pull;
    const Gift gift(whole);
    const GiftScene scene = gift.at({.opening = kAjar});
    const Transform front = panelIn(scene, pull.face.piece, pull.face.panel);
    const Point3 out = front.normal() * -1;
    double sleeve = -1e9;
    double loop = -1e9;
    for (std::size_t i = 0; i < scene.shown.owners.size(); ++i)
      for (const Point& p : scene.shown.net.panels[i].outline) {
        const double at = dot(scene.shown.pose[i].apply(p) - front.apply(Point{}), out);
        const int piece = scene.shown.owners[i].piece;
        if (piece < 0) loop = std::max(loop, at);
        if (piece >= 0 && piece != pull.face.piece) sleeve = std::max(sleeve, at);
      }
    EXPECT_LT(sleeve, -20) << face;
    EXPECT_GT(loop, 10) << face;
  }
}

TEST(RibbonPull, TakesTheHoleThatIsThereAndNoFaceInsideTheSleeve) {
  const BuiltDesign whole = built(drawer(""));
  ASSERT_EQ(whole.ribbons.size(), 1U);
  EXPECT_EQ(whole.ribbons[0].pull->holes, 1);
  const Panel& panel =
      whole.pieces[0].net.panels.at(static_cast<std::size_t>(whole.ribbons[0].pull->face.panel));
  EXPECT_EQ(panel.id, "base/right");
  EXPECT_EQ(panel.openings.size(), 1U);
  for (const char* hidden : {"tray:base/front", "tray:base/back"}) {
    const BuiltDesign refused = built(drawer(hidden));
    EXPECT_TRUE(refused.ribbons.empty());
    ASSERT_EQ(refused.problems.size(), 1U) << hidden;
    EXPECT_EQ(refused.problems[0].code, ProblemCode::ExtraFaceUnknown);
  }
}

TEST(RibbonPull, TapeForItsEndsIsOnTheListToo) {
  Design design = drawer("tray:base/left");
  const auto tapeOf = [](const Design& each) {
    Length all;
    for (const Supply& supply : makeGuide(built(each)).supplies)
      if (supply.kind == SupplyKind::Tape) all += supply.length;
    return all;
  };
  const Length knotted = tapeOf(design);
  design.extras[0].parameters.setCount("ends", 1);
  design.extras[0].parameters.set("end", mm(30));
  EXPECT_EQ(tapeOf(design), knotted + mm(60));
}

TEST(RibbonPull, IsThreadedWhileItsPieceLiesFlatAndItsRibbonIsOnTheList) {
  const BuiltDesign whole = built(drawer("tray:base/left"));
  const Guide guide = makeGuide(whole);
  const auto step = std::ranges::find(guide.steps, 0, &Step::extra);
  ASSERT_NE(step, guide.steps.end());
  EXPECT_EQ(step->piece, whole.ribbons[0].pull->face.piece);
  EXPECT_EQ(step->figure.kind, FigureKind::Sheet);
  EXPECT_EQ(step->figure.put.size(), 4U) << "two ends and two knots";
  EXPECT_EQ(std::count_if(guide.steps.begin(), step,
                          [](const Step& s) { return s.code == StepCode::FoldStage; }),
            0);
  const auto ribbon = std::ranges::find(guide.supplies, SupplyKind::Ribbon, &Supply::kind);
  ASSERT_NE(ribbon, guide.supplies.end());
  EXPECT_EQ(ribbon->length, whole.ribbons[0].length);
}

}  // namespace
}  // namespace creasewright
