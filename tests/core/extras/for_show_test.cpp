#include "core/extras/in_space.h"
#include "document/remove_extra.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::inSpace;
using testing::piecesOf;
using testing::tells;
using testing::toldOf;

Design showDesign(std::string_view style, const char* product) {
  return *newDesign(style, *parseProduct(product), *findCard("220gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

/// What lies close before the middle of a flat piece and is not put onto it.
std::string cardBefore(const BuiltDesign& design, const BuiltPiece& shown) {
  const Transform place = *inSpace(design, shown);
  const Panel& panel = shown.net.panels.front();
  const Point3 from = place.apply(centroid(panel.outline));
  const Point3 out = place.normal() * -1;
  for (const BuiltPiece& other : design.pieces) {
    if (&other == &shown || (other.role && other.role->extra == shown.role->extra)) continue;
    const auto where = inSpace(design, other);
    if (!where || (other.role && other.role->placing == Placing::OnFace)) continue;
    for (std::size_t i = 0; i < other.net.panels.size(); ++i) {
      const Transform there = where->after(other.folded[i]);
      const double rate = dot(there.normal(), out);
      if (std::abs(rate) < 0.5) continue;
      const double far = dot(there.normal(), there.apply(Point{}) - from) / rate;
      const Point3 at = there.inverse().apply(from + out * far);
      constexpr double kNear = 12;
      if (far > 0.02 && far < kNear &&
          locate({at.x, at.y}, other.net.panels[i].outline) == Side::Inside)
        return other.name + ":" + other.net.panels[i].id;
    }
  }
  return {};
}

// Law: what chooses its place itself lies upright on a side that is seen, under nothing, or one
// sentence says why not. Judged by where its card is in space.
TEST(ForShow, WhatChoosesItselfIsSeenUprightOnEveryStyle) {
  testing::Random random(4711);
  int shown = 0;
  int told = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 3; ++round) {
      Design design = testing::fitted(random, style);
      if (round > 0) design.extras.push_back(extraOf("sleeve", design));
      if (round > 1) design.extras.push_back(extraOf("belly-band", design));
      design.extras.push_back(extraOf("label", design));
      Extra& label = design.extras.back();
      label.parameters.setCount("mat", 0);
      if (random.whole(0, 1) == 1) {
        label.parameters.set("width", Length::mm(random.whole(15, 60)));
        label.parameters.set("height", Length::mm(random.whole(12, 40)));
      }
      const BuiltDesign whole = built(design);
      const auto pieces = piecesOf(whole, static_cast<int>(design.extras.size()) - 1);
      if (pieces.empty()) {
        EXPECT_NE(toldOf(whole, "label"), nullptr) << style.id;
        ++told;
        continue;
      }
      const auto place = inSpace(whole, *pieces[0]);
      if (!place || tells(whole, ProblemCode::ExtraCovered)) continue;
      ++shown;
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      const testing::Room room = testing::roomOf(whole);
      const Point3 out = place->normal() * -1;
      EXPECT_GT(dot(out, room.up), -0.5) << "on the underside";
      EXPECT_GT(dot(out, room.front), -0.7) << "on the back";
      const Point3 top = place->turn({0, 1, 0});
      if (std::abs(dot(out, room.up)) < 0.7) {
        EXPECT_GT(dot(top, room.up), 0.3) << "upside down";
      } else {
        EXPECT_LT(dot(top, room.front), 0.3) << "upside down";
      }
      EXPECT_EQ(cardBefore(whole, *pieces[0]), "");
    }
  EXPECT_GT(shown, 60);
  EXPECT_GT(told, 5);
}

TEST(ForShow, ALabelGoesNeitherUnderASleeveNorUnderATray) {
  Design tray = showDesign("rolled-wall-tray", "box:90x60x30mm");
  tray.extras = {extraOf("sleeve", tray), extraOf("belly-band", tray), extraOf("label", tray)};
  tray.extras[1].parameters.set("width", Length::mm(30));
  tray.extras[2].parameters.set("width", Length::mm(40));
  tray.extras[2].parameters.set("height", Length::mm(40));
  tray.extras[2].parameters.setCount("mat", 0);
  const BuiltDesign under = built(tray);
  const Problem* why = toldOf(under, "label");
  ASSERT_NE(why, nullptr);
  EXPECT_TRUE(piecesOf(under, 2).empty());
  ASSERT_EQ(why->code, ProblemCode::ExtraTooLarge);
  const Length most = std::get<Length>(why->values[1]);
  EXPECT_GE(most, Length::mm(26));
  tray.extras[2].parameters.set("width", most);
  tray.extras[2].parameters.set("height", most);
  EXPECT_FALSE(piecesOf(built(tray), 2).empty());

  Design open = showDesign("framed-tray", "box:89x64x25mm");
  open.extras = {extraOf("label", open)};
  open.extras[0].parameters.set("width", Length::mm(50));
  open.extras[0].parameters.set("height", Length::mm(50));
  const BuiltDesign bare = built(open);
  EXPECT_TRUE(piecesOf(bare, 0).empty());
  ASSERT_NE(toldOf(bare, "label"), nullptr);
  EXPECT_EQ(toldOf(bare, "label")->code, ProblemCode::ExtraTooLarge);
}

TEST(ForShow, ABowIsNotGluedAcrossAWindow) {
  Design design = showDesign("straight-tuck-box", "box:60x35x120mm");
  design.extras = {extraOf("window", design), extraOf("made-bow", design)};
  design.extras[0].face = "box:front";
  const BuiltDesign whole = built(design);
  ASSERT_EQ(whole.ribbons.size(), 1U);
  const FacePlace& face = *whole.ribbons[0].shape->face;
  const BuiltPiece& on = testing::hostOf(whole, face);
  const Panel& panel = on.net.panels.at(static_cast<std::size_t>(face.panel));
  const Point3 knot = face.place.apply(Point{});
  for (const Polygon& opening : panel.openings)
    EXPECT_EQ(locate({knot.x, knot.y}, opening), Side::Outside);
}

TEST(ForShow, WhatLosesItsHostStaysOnItsSideOrIsTold) {
  // On a box with a lid the top is still there when the band has gone.
  Design closed = showDesign("two-piece-box", "box:60x35x40mm");
  closed.extras = {extraOf("belly-band", closed), extraOf("label", closed)};
  closed.extras[1].host = 0;
  const BuiltDesign banded = built(closed);
  ASSERT_FALSE(piecesOf(banded, 1).empty());
  const Point3 before = inSpace(banded, *piecesOf(banded, 1)[0])->normal();
  const BuiltDesign bare = built(withoutExtra(banded, 0));
  ASSERT_FALSE(piecesOf(bare, 0).empty());
  EXPECT_GT(dot(before, inSpace(bare, *piecesOf(bare, 0)[0])->normal()), 0.9);
  EXPECT_TRUE(onlyWarnings(bare.problems));
  // Over an open tray there is nothing.
  Design open = showDesign("framed-tray", "box:89x64x25mm");
  open.extras = {extraOf("belly-band", open), extraOf("label", open)};
  open.extras[1].host = 0;
  open.extras[1].parameters.set("width", Length::mm(20));
  open.extras[1].parameters.set("height", Length::mm(12));
  open.extras[1].parameters.setCount("mat", 0);
  const BuiltDesign onBand = built(open);
  ASSERT_FALSE(piecesOf(onBand, 1).empty());
  const BuiltDesign lost = built(withoutExtra(onBand, 0));
  EXPECT_TRUE(piecesOf(lost, 0).empty());
  ASSERT_NE(toldOf(lost, "label"), nullptr);
  EXPECT_EQ(toldOf(lost, "label")->code, ProblemCode::ExtraFaceUnknown);
  EXPECT_EQ(std::get<std::string>(toldOf(lost, "label")->values[0]).substr(0, 5), "band:");
}

}  // namespace
}  // namespace creasewright
