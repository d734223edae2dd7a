#include <algorithm>
#include <cmath>

#include "core/extras/built_extras.h"
#include "extras/layer_stack.h"
#include "guide/make_guide.h"
#include "kits/kit_plan.h"
#include "kits/shopping.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::piecesOf;

Design boxWithLabel() {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:90x50x120mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("label", design)};
  design.extras[0].parameters.setCount("mat", 0);
  return design;
}

TEST(Layers, EveryShapeFillsItsSizeAndDoesNotCross) {
  for (std::size_t shape = 0; shape < shapeWords().size(); ++shape)
    for (const auto& [w, h] : {std::pair{30.0, 20.0}, {20.0, 45.0}, {60.0, 60.0}, {90.0, 12.0}}) {
      const Polygon outline = labelOutline(static_cast<LabelShape>(shape), w, h);
      const Bounds box = bounds(outline);
      EXPECT_TRUE(isSimple(outline)) << shape << ' ' << w;
      EXPECT_GT(signedArea(outline), 0.3 * w * h) << shape << ' ' << w;
      EXPECT_NEAR(box.low.x, 0, 1e-6) << shape;
      EXPECT_NEAR(box.low.y, 0, 1e-6) << shape;
      EXPECT_NEAR(box.high.x, w, 1e-6) << shape;
      EXPECT_NEAR(box.high.y, h, 1e-6) << shape;
    }
}

// A square on its corner with two half circles, side a: width 1.70711 a, height 1.56066 a, area
// 1.78540 a^2 (by geometry).
TEST(Layers, AHeartHasTheAreaOfASquareAndTwoHalfCircles) {
  const double a = 58.579;
  EXPECT_NEAR(signedArea(labelOutline(LabelShape::Heart, 1.70711 * a, 1.56066 * a)),
              1.78540 * a * a, 0.01 * a * a);
}

// With lobes of 8 mm the valleys of a scalloped circle of 50.8 mm lie on one of about 44.8 mm (own
// derivation, half circles a little flatter).
TEST(Layers, ACircleOnAScalloppedCircleStaysInsideItsValleys) {
  Design design = boxWithLabel();
  Extra& label = design.extras[0];
  label.parameters.setCount("shape", static_cast<int>(LabelShape::ScallopedCircle));
  label.parameters.set("width", Length::mm(50.8));
  label.layers = {standardLayer(design.card)};
  label.layers[0].parameters.setCount("shape", static_cast<int>(LabelShape::Circle));
  label.layers[0].parameters.set("inset", Length::mm(1.5));
  const BuiltDesign whole = built(design);
  ASSERT_EQ(piecesOf(whole, 0).size(), 2U);
  const double across = piecesOf(whole, 0).at(1)->flat.width;
  EXPECT_LE(across, 44.8 - 3 + 0.5);
  EXPECT_GE(across, 40);
}

TEST(Layers, ALayerLargerThanWhatIsUnderItIsToldUnlessItIsMeantTo) {
  Design design = boxWithLabel();
  Extra& label = design.extras[0];
  label.parameters.set("width", Length::mm(40));
  label.parameters.set("height", Length::mm(30));
  label.layers = {standardLayer(design.card)};
  Parameters& layer = label.layers[0].parameters;
  layer.set("width", Length::mm(60));
  layer.set("height", Length::mm(10));
  BuiltDesign whole = built(design);
  ASSERT_EQ(whole.problems.size(), 1U);
  EXPECT_EQ(whole.problems[0].code, ProblemCode::LayerTooLarge);
  EXPECT_EQ(std::get<Length>(whole.problems[0].values.at(1)), Length::mm(60));
  const Length advised = std::get<Length>(whole.problems[0].values.at(2));
  EXPECT_LE(advised, Length::mm(40));
  EXPECT_GE(advised, Length::mm(38));
  layer.set("width", advised);
  layer.set("height", advised * 10 / 60);
  EXPECT_TRUE(built(design).problems.empty());
  layer.set("width", Length::mm(60));
  layer.setCount("overhang", 1);
  EXPECT_TRUE(built(design).problems.empty());
}

TEST(Layers, EachIsAPieceOfItsOwnCard) {
  Design design = boxWithLabel();
  Extra& label = design.extras[0];
  for (const char* card : {"index-90lb", "cover-65lb"}) {
    label.layers.push_back(standardLayer(*findCard(card)));
    label.layers.back().lines = {card};
  }
  const BuiltDesign whole = built(design);
  const auto pieces = piecesOf(whole, 0);
  ASSERT_EQ(pieces.size(), 3U);
  EXPECT_EQ(pieces[1]->card.id, "index-90lb");
  EXPECT_EQ(pieces[2]->card.id, "cover-65lb");
  EXPECT_EQ(pieces[2]->net.inscriptions.at(0).text, "cover-65lb");
  EXPECT_NE(pieces[1]->name, pieces[2]->name);
  EXPECT_LT(pieces[1]->flat.width, pieces[0]->flat.width);
  EXPECT_LT(pieces[2]->flat.width, pieces[1]->flat.width);
}

TEST(Layers, FoamIsCountedAndBought) {
  Design design = boxWithLabel();
  Extra& label = design.extras[0];
  label.parameters.set("width", Length::mm(60));
  label.parameters.set("height", Length::mm(40));
  label.layers = {standardLayer(design.card), standardLayer(design.card)};
  for (ExtraLayer& layer : label.layers) {
    layer.parameters.setCount("hold", 2);
    layer.parameters.set("foam", Length::mm(2));
  }
  const BuiltDesign whole = built(design);
  int dots = 0;
  for (const BuiltPiece* piece : piecesOf(whole, 0)) dots += piece->role->layer->foamDots;
  EXPECT_GE(dots, 8);
  const Guide guide = makeGuide(whole);
  const auto foam = std::ranges::find(guide.supplies, SupplyKind::FoamDots, &Supply::kind);
  ASSERT_NE(foam, guide.supplies.end());
  EXPECT_EQ(foam->quantity, dots);
  EXPECT_EQ(foam->width, Length::mm(2));
}

TEST(Layers, FoamDotsLieNoFartherApartThanTheTradeHasIt) {
  const auto dots = [](double w, double h) {
    return foamDotsFor({{0, 0}, {w, 0}, {w, h}, {0, h}});
  };
  EXPECT_EQ(dots(15, 15), 1);
  EXPECT_GE(dots(25, 25), 3);
  EXPECT_EQ(dots(46, 46), 4);
  for (const double w : {60.0, 100.0, 150.0}) {
    // Round the edge of the rectangle 3 mm inside, no gap is wider than 40 mm.
    EXPECT_GE(40.0 * dots(w, 60), 2 * (w - 6 + 54)) << w;
  }
}

TEST(Layers, APunchedLayerIsNotCutAndThePunchIsATool) {
  Design design = boxWithLabel();
  Extra& label = design.extras[0];
  label.parameters.setCount("shape", 1);
  label.parameters.setCount("punched", 1);
  label.parameters.set("width", Length::inches(2));
  const BuiltDesign whole = built(design);
  const Guide guide = makeGuide(whole);
  EXPECT_EQ(std::ranges::count(guide.tools, ToolCode::Punch), 1);
  for (const Step& step : guide.steps)
    if (step.code != StepCode::AddExtra) {
      EXPECT_EQ(step.piece, 0);
    }
}

// Two loops, two tails and a knot: B 90, T 70, w 15 give 380 mm; B 130, T 100, w 22 give 548 mm (by
// the formula 2B + 2T + 4w; the knot is common practice). 20 mm of trimmed ends, up to the
// centimetre.
TEST(Bow, TakesRibbonByItsFormula) {
  Design design = *newDesign("straight-tuck-box", *parseProduct("box:300x100x300mm"),
                             *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.extras = {extraOf("made-bow", design)};
  const auto length = [&](double span, double tail, double width, int form, int layers) {
    Parameters& bow = design.extras[0].parameters;
    bow.set("span", Length::mm(span));
    bow.set("tail", Length::mm(tail));
    bow.set("width", Length::mm(width));
    bow.setCount("form", form);
    bow.setCount("layers", layers);
    const BuiltDesign whole = built(design);
    EXPECT_TRUE(whole.problems.empty());
    return whole.ribbons.at(0).length.mm();
  };
  EXPECT_NEAR(length(90, 70, 15, 0, 1), 400, 1e-6);
  EXPECT_NEAR(length(130, 100, 22, 0, 1), 570, 1e-6);
  // A folded one of two layers: 2 x 90 + 15, 2 x 70 + 15, tails 2 x 36, band 30 + 2.4 + 15.
  EXPECT_NEAR(length(90, 36, 15, 2, 2), 490, 1e-6);
}

TEST(Bow, LiesWhereRibbonsCrossElseOnAFace) {
  Design design = boxWithLabel();
  design.extras = {extraOf("made-bow", design)};
  const BuiltDesign alone = built(design);
  ASSERT_EQ(alone.ribbons.size(), 1U);
  EXPECT_TRUE(alone.ribbons[0].shape->face.has_value());
  design.extras.push_back(extraOf("ribbon", design));
  const BuiltDesign tied = built(design);
  EXPECT_TRUE(tied.problems.empty());
  ASSERT_EQ(tied.ribbons.size(), 2U);
  const RibbonNeed& bow = tied.ribbons[0];
  const RibbonNeed& ribbon = tied.ribbons[1];
  ASSERT_TRUE(bow.shape->crossing.has_value());
  // Over the middle of the box, above its top; the ribbon itself ties no bow.
  const Point3 off = bow.shape->crossing->apply(Point{}) - ribbon.round.centre;
  EXPECT_NEAR(dot(off, ribbon.round.axes[0]), 0, 1e-6);
  EXPECT_NEAR(dot(off, ribbon.round.axes[1]), 0, 1e-6);
  EXPECT_GT(std::abs(dot(off, ribbon.round.axes[2])), ribbon.round.sizes[2] / 2);
  EXPECT_EQ(ribbon.bow, Length::mm(20));
  // The guide ties before it glues.
  std::vector<int> order;
  for (const Step& step : makeGuide(tied).steps)
    if (step.code == StepCode::AddExtra) order.push_back(step.extra);
  EXPECT_EQ(order, (std::vector<int>{1, 0}));
}

}  // namespace
}  // namespace creasewright
