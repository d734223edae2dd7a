#include "core/extras/in_space.h"
#include "guide/make_guide.h"
#include "pages/gift.h"
#include "pages/gift_strip.h"
#include "support/pierced.h"

namespace creasewright {
namespace {

using testing::built;
using testing::extraOf;
using testing::fitted;

bool hasStop(const BuiltDesign& whole, int extra) {
  return std::ranges::any_of(giftStops(whole), [&](const StripStop& stop) {
    return stop.code == StopCode::AddExtra && stop.extra == extra;
  });
}

/// Whether ribbon lies close behind a place of the tag.
bool ribbonBehind(const GiftScene& scene, const Transform& tag, Point there) {
  constexpr double kClose = 4;  // mm
  const Point3 from = tag.apply(there);
  for (std::size_t i = 0; i < scene.shown.owners.size(); ++i) {
    if (scene.shown.owners[i].piece >= 0) continue;
    const Point3 at = scene.shown.pose[i].inverse().apply(from);
    if (std::abs(at.z) > kClose) continue;
    // A hole by the crossing is beside it: within reach of a thread.
    const Polygon& strip = scene.shown.net.panels[i].outline;
    if (locate({at.x, at.y}, strip) != Side::Outside || testing::clearOf(strip, {at.x, at.y}) < 7)
      return true;
  }
  return false;
}

// Law: a tag on a ribbon hangs by its hole on the ribbon, goes through nothing, stays above the
// ground, and has its moment after the ribbon; one that finds no room there is told, with the
// height that has.
TEST(Hanging, ATagHangsOnItsRibbonAndThroughNothing) {
  testing::Random random(195);
  int hanging = 0;
  int told = 0;
  for (const Style& style : styles())
    for (int round = 0; round < 4; ++round) {
      SCOPED_TRACE(std::string(style.id) + ' ' + std::to_string(round));
      Design design = fitted(random, style);
      design.extras = {extraOf("ribbon", design), extraOf("tag", design)};
      design.extras[0].parameters.setCount("cross", round % 2);
      design.extras[1].parameters.setCount("mat", round / 2);
      design.extras[1].parameters.set("width", Length::mm(random.whole(15, 50)));
      design.extras[1].parameters.set("height", Length::mm(random.whole(20, 75)));
      const BuiltDesign whole = built(design);
      if (whole.ribbons.empty()) continue;
      const auto pieces = testing::piecesOf(whole, 1);
      ASSERT_FALSE(pieces.empty());
      const Gift gift(whole);
      EXPECT_TRUE(hasStop(whole, 1));
      EXPECT_EQ(gift.holds(*pieces[0]), pieces[0]->role->around.has_value());
      if (!pieces[0]->role->around) {
        EXPECT_NE(testing::toldOf(whole, "tag"), nullptr);
        ++told;
        continue;
      }
      ++hanging;
      EXPECT_EQ(giftStops(whole).back().extra, 1) << "after the ribbon";
      const GiftScene scene = gift.at({});
      double ground = 1e9;
      for (std::size_t i = 0; i < scene.shown.owners.size(); ++i)
        for (const Point& p : scene.shown.net.panels[i].outline) {
          const int piece = scene.shown.owners[i].piece;
          if (piece >= 0 && !whole.pieces[static_cast<std::size_t>(piece)].role)
            ground = std::min(ground, dot(scene.shown.pose[i].apply(p), scene.up));
        }
      for (std::size_t i = 0; i < scene.shown.owners.size(); ++i) {
        const int piece = scene.shown.owners[i].piece;
        const auto own = [&](int p) {
          return p >= 0 && whole.pieces[static_cast<std::size_t>(p)].role;
        };
        if (!own(piece)) continue;
        const Panel& tag = scene.shown.net.panels[i];
        for (const Point& p : tag.outline)
          EXPECT_GT(dot(scene.shown.pose[i].apply(p), scene.up), ground - 0.5);
        const Bounds hole = bounds(tag.openings.at(0));
        EXPECT_TRUE(ribbonBehind(scene, scene.shown.pose[i], (hole.low + hole.high) / 2));
        for (std::size_t k = 0; k < scene.shown.owners.size(); ++k) {
          const int other = scene.shown.owners[k].piece;
          // The loops of a bow stand up through what lies under them.
          if (other < 0 || own(other)) continue;
          EXPECT_FALSE(testing::panelsCut(tag, scene.shown.pose[i], scene.shown.net.panels[k],
                                          scene.shown.pose[k], 0.1))
              << scene.shown.net.panels[k].id;
        }
      }
    }
  EXPECT_GT(hanging, 40);
  EXPECT_LT(told, hanging / 4);
}

// The string is long enough for the outline of the box across its middle, and a bow by 2B + 2T +
// 4w.
TEST(Hanging, ATagWithNoRibbonHangsOnAStringOfItsOwn) {
  testing::Random random(196);
  Design design = fitted(random, **findStyle("straight-tuck-box"));
  design.extras = {extraOf("tag", design)};
  const BuiltDesign whole = built(design);
  EXPECT_TRUE(onlyWarnings(whole.problems));
  ASSERT_EQ(whole.ribbons.size(), 1U);
  const RibbonNeed& string = whole.ribbons[0];
  const auto& sizes = string.round.sizes;
  const std::size_t axis = string.ways.at(0).axis;
  const double round = 2 * (sizes.at((axis + 1) % 3) + sizes.at((axis + 2) % 3));
  const double bow = 2 * 50.0 + 2 * 40.0 + 4 * 2.0;
  EXPECT_GT(string.length.mm(), round + bow - 2);
  EXPECT_LT(string.length.mm(), round + bow + 15);
  EXPECT_TRUE(hasStop(whole, 0));
  EXPECT_TRUE(Gift(whole).holds(*testing::piecesOf(whole, 0)[0]));
  const auto supplies = makeGuide(whole).supplies;
  EXPECT_TRUE(std::ranges::any_of(supplies, [&](const Supply& supply) {
    return supply.kind == SupplyKind::Ribbon && supply.length == string.length;
  }));
  // Over an open tray there is no way for it.
  Design tray = *newDesign("framed-tray", parseProduct("box:89x64x25mm").value(), design.card,
                           Ease::Easy, ToolGrid::millimetre());
  tray.extras = {extraOf("tag", tray)};
  const BuiltDesign open = built(tray);
  EXPECT_TRUE(testing::piecesOf(open, 0).empty());
  EXPECT_TRUE(testing::tells(open, ProblemCode::ExtraUnhung));
  // Round the band it hangs.
  tray.extras.insert(tray.extras.begin(), extraOf("belly-band", tray));
  const BuiltDesign banded = built(tray);
  EXPECT_EQ(banded.ribbons.size(), 1U);
  EXPECT_FALSE(testing::tells(banded, ProblemCode::ExtraUnhung));
}

// Law: whatever the shape of a tag, it is punched on its upright middle with 2 mm of card all
// round, or told with a size at which it is. A star, a heart or a banner has no card near its top.
TEST(Hanging, ATagOfAnyShapeIsPunchedWhereThereIsCardAllRound) {
  testing::Random random(197);
  int punched = 0;
  int told = 0;
  const ParameterSpec& shapes = (*findExtraKind("tag"))->parameters.front();
  ASSERT_EQ(shapes.key, "shape");
  for (std::size_t shape = 0; shape < shapes.choices.size(); ++shape)
    for (int round = 0; round < 40; ++round) {
      SCOPED_TRACE(shape);
      Design design = fitted(random, **findStyle("two-piece-box"));
      design.extras = {extraOf("ribbon", design), extraOf("tag", design)};
      Parameters& parameters = design.extras[1].parameters;
      parameters.setCount("shape", static_cast<std::int64_t>(shape));
      // The first ones in the size that it has of itself.
      if (round > 1) {
        parameters.set("width", Length::mm(random.whole(8, 90)));
        parameters.set("height", Length::mm(random.whole(8, 90)));
      }
      BuiltDesign whole = built(design);
      const auto small =
          std::ranges::find(whole.problems, ProblemCode::ParameterTooSmall, &Problem::code);
      if (small != whole.problems.end()) {
        ASSERT_GT(round, 1);
        ++told;
        const Length is = parameters.length(small->where);
        ASSERT_EQ(std::get<Length>(small->values[0]), is);
        const double times = std::get<Length>(small->values[1]).mm() / is.mm();
        ASSERT_GT(times, 1);
        for (const char* side : {"width", "height"})
          parameters.set(side, Length::mm(parameters.length(side).mm() * times * 1.0001));
        whole = built(design);
      }
      const auto pieces = testing::piecesOf(whole, 1);
      if (pieces.empty()) {
        EXPECT_NE(testing::toldOf(whole, "tag"), nullptr);
        continue;
      }
      const Panel& tag = pieces.front()->net.panels.front();
      const Bounds hole = bounds(tag.openings.front());
      const Bounds all = bounds(tag.outline);
      EXPECT_NEAR(hole.low.x + hole.high.x, all.low.x + all.high.x, 1e-6);
      for (const Point& p : tag.openings.front()) {
        EXPECT_EQ(locate(p, tag.outline), Side::Inside);
        EXPECT_GT(testing::clearOf(tag.outline, p), 2 - 0.01);
      }
      ++punched;
    }
  EXPECT_GT(punched, 500);
  EXPECT_GT(told, 20);
}

}  // namespace
}  // namespace creasewright
