#include "core/extras/in_space.h"
#include "extras/layer_stack.h"
#include "extras/ribbon_picture.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::inSpace;
using testing::toldOf;

Design bowDesign(std::string_view style, const char* product) {
  return *newDesign(style, *parseProduct(product), *findCard("220gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

/// A bow's panels in space, and those of flat pieces that it goes through.
struct DrawnBow {
  Net net;
  Pose pose;
};
DrawnBow drawn(const BuiltDesign& design, const RibbonNeed& bow) {
  DrawnBow there;
  addBow(*bow.shape, bow.width.mm(), *inSpace(design, *bow.shape), there.net, there.pose);
  return there;
}

/// Flat pieces on the bow's side that a point of it lies within or under.
std::string through(const BuiltDesign& design, const DrawnBow& bow, Point3 out) {
  for (const BuiltPiece& piece : design.pieces) {
    if (!piece.role || piece.role->placing != Placing::OnFace) continue;
    const auto place = inSpace(design, piece);
    if (!place || dot(place->normal() * -1, out) < 0.95) continue;
    for (std::size_t i = 0; i < bow.net.panels.size(); ++i)
      for (const Point& p : bow.net.panels[i].outline) {
        const Point3 at = place->inverse().apply(bow.pose[i].apply(p));
        const bool inside = locate({at.x, at.y}, piece.net.panels.front().outline) == Side::Inside;
        if (inside && at.z > -piece.card.caliper.mm() / 2 && at.z < 20) return piece.name;
      }
  }
  return {};
}

// Law: a bow on a face keeps its loops and tails on that face, lies over every layer that it
// crosses, and across no opening; what finds no place is told. Judged by its panels in space.
TEST(Bow, LiesOnItsFaceOverAllThatItCrossesOnEveryStyle) {
  testing::Random random(812);
  int made = 0;
  int overLayers = 0;
  int told = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      Design design = testing::fitted(random, style);
      if (round % 2 == 1) {
        design.extras.push_back(extraOf("label", design));
        design.extras.back().parameters.setCount("mat", round / 2);
        design.extras.back().layers = {standardLayer(design.card)};
        design.extras.back().layers[0].parameters.setCount("hold", 2);
      }
      design.extras.push_back(extraOf("made-bow", design));
      Parameters& own = design.extras.back().parameters;
      own.set("width", Length::mm(random.whole(3, 18)));
      own.setCount("form", random.whole(0, 2));
      own.setCount("layers", 1);
      own.setCount("turn", random.whole(0, 359));
      if (random.whole(0, 1) == 1) own.set("span", Length::mm(random.whole(40, 80)));
      const BuiltDesign whole = built(design);
      if (whole.ribbons.empty()) {
        EXPECT_NE(toldOf(whole, "made-bow"), nullptr);
        ++told;
        continue;
      }
      const RibbonNeed& bow = whole.ribbons[0];
      const auto place = inSpace(whole, *bow.shape);
      if (!place) continue;
      ++made;
      const FacePlace& face = *bow.shape->face;
      const BuiltPiece& on = testing::hostOf(whole, face);
      const Panel& panel = on.net.panels.at(static_cast<std::size_t>(face.panel));
      const DrawnBow there = drawn(whole, bow);
      const Transform back =
          inSpace(whole, on)->after(on.folded.at(static_cast<std::size_t>(face.panel))).inverse();
      for (std::size_t i = 0; i < there.net.panels.size(); ++i)
        for (const Point& p : there.net.panels[i].outline) {
          const Point3 at = back.apply(there.pose[i].apply(p));
          EXPECT_NE(locate({at.x, at.y}, panel.outline, 0.02), Side::Outside);
          for (const Polygon& opening : panel.openings)
            EXPECT_FALSE(locate({at.x, at.y}, opening) == Side::Inside &&
                         testing::clearOf(opening, {at.x, at.y}) > 0.02);
        }
      EXPECT_EQ(through(whole, there, place->normal() * -1), "");
      overLayers += -face.place.apply(Point{}).z > 2.5;
    }
  EXPECT_GT(made, 60);
  EXPECT_GT(overLayers, 2);
  EXPECT_GT(told, 0);
}

TEST(Bow, ChoosesASizeThatFitsAndTellsOneThatDoesNot) {
  Design tray = bowDesign("framed-tray", "box:89x64x25mm");
  tray.extras = {extraOf("made-bow", tray)};
  const BuiltDesign fitting = built(tray);
  EXPECT_TRUE(fitting.problems.empty());
  ASSERT_EQ(fitting.ribbons.size(), 1U);
  EXPECT_GE(fitting.ribbons[0].shape->span, 30);
  tray.extras[0].parameters.set("span", Length::mm(90));
  const BuiltDesign large = built(tray);
  EXPECT_TRUE(large.ribbons.empty());
  ASSERT_NE(toldOf(large, "made-bow"), nullptr);
  ASSERT_EQ(toldOf(large, "made-bow")->code, ProblemCode::ExtraTooLarge);
  tray.extras[0].parameters.set("span", std::get<Length>(toldOf(large, "made-bow")->values[1]));
  EXPECT_EQ(built(tray).ribbons.size(), 1U);
  // Beyond the edge with its middle.
  tray.extras[0].parameters.set("span", Length());
  tray.extras[0].parameters.set("up", Length::mm(60));
  const BuiltDesign off = built(tray);
  ASSERT_NE(toldOf(off, "made-bow"), nullptr);
  EXPECT_EQ(toldOf(off, "made-bow")->code, ProblemCode::ExtraMiddleOff);
}

}  // namespace
}  // namespace creasewright
