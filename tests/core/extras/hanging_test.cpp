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

}  // namespace
}  // namespace creasewright
