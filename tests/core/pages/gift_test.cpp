#include "pages/gift.h"

#include <array>
#include <set>

#include <gtest/gtest.h>

#include "core/extras/built_extras.h"
#include "pages/fold_drawing.h"
#include "styles/registry.h"
#include "support/pierced.h"

namespace creasewright {
namespace {

using testing::extraOf;

Design giftOf(std::string_view style, const char* product = "box:90x60x30mm") {
  return *newDesign(style, *parseProduct(product), *findCard("300gsm"), Ease::Easy,
                    ToolGrid::millimetre());
}

BuiltDesign builtWith(std::string_view style, std::initializer_list<const char*> extras) {
  Design design = giftOf(style);
  for (const char* kind : extras) design.extras.push_back(extraOf(kind, design));
  return *build(design);
}

constexpr std::array kOfSeveral{"two-piece-box", "drawer-box", "prism-box-with-lid",
                                "exploding-box"};

FoldPicture pictureAt(const BuiltDesign& built, const GiftState& state) {
  const Gift gift(built);
  return pictureOf(gift.at(state), standardView());
}

/// The facet that is seen at each of so many places.
std::vector<const Facet*> facetsSeen(const FoldPicture& picture) {
  constexpr int kPlaces = 90;
  std::vector<const Facet*> seen;
  for (int y = 0; y < kPlaces; ++y)
    for (int x = 0; x < kPlaces; ++x) {
      const Point at = picture.extent.low + Point{picture.extent.width() * (x + 0.37) / kPlaces,
                                                  picture.extent.height() * (y + 0.37) / kPlaces};
      for (auto facet = picture.facets.rbegin(); facet != picture.facets.rend(); ++facet)
        if (locate(at, facet->outline) == Side::Inside) {
          seen.push_back(&*facet);
          break;
        }
    }
  return seen;
}

/// Pieces of which a face is seen.
std::set<int> piecesSeen(const BuiltDesign& built, const GiftState& state) {
  const Gift gift(built);
  const GiftScene scene = gift.at(state);
  const FoldPicture picture = pictureOf(scene, standardView());
  std::set<int> seen;
  for (const Facet* facet : facetsSeen(picture))
    if (facet->panel >= 0)
      seen.insert(scene.shown.owners.at(static_cast<std::size_t>(facet->panel)).piece);
  return seen;
}

bool showsProduct(const FoldPicture& picture) {
  return std::ranges::any_of(facetsSeen(picture), [](const Facet* f) { return f->panel < 0; });
}

struct Span {
  double low = 1e9;
  double high = -1e9;
  void take(double at) {
    low = std::min(low, at);
    high = std::max(high, at);
  }
};

/// How far the panels of the box or of what goes round it reach in a direction.
Span reach(const BuiltDesign& built, const Dressed& shown, bool own, Point3 along) {
  Span span;
  for (std::size_t i = 0; i < shown.net.panels.size(); ++i) {
    const int piece = shown.owners[i].piece;
    if (piece < 0 || built.pieces[static_cast<std::size_t>(piece)].role.has_value() == own)
      continue;
    for (const Point& corner : shown.net.panels[i].outline)
      span.take(dot(shown.pose[i].apply(corner), along));
  }
  return span;
}

TEST(Gift, AllPiecesOfEveryStyleStandTogether) {
  for (const Style& style : styles()) {
    const BuiltDesign built = builtWith(style.id, {});
    const Gift gift(built);
    for (const BuiltPiece& piece : built.pieces)
      EXPECT_TRUE(gift.holds(piece)) << style.id << ' ' << piece.name;
    const std::set<int> seen = piecesSeen(built, {.opening = kAjar});
    // A cross within a cross may be hidden by its walls.
    if (style.id != "exploding-box") {
      EXPECT_EQ(seen.size(), built.pieces.size()) << style.id;
    }
  }
}

TEST(Gift, DividersCrossInTheirSlots) {
  for (const auto& [columns, rows] : {std::pair{2, 2}, {3, 2}, {4, 5}}) {
    Design design = giftOf("partition-insert", "box:30x30x40mm");
    design.parameters.setCount("columns", columns);
    design.parameters.setCount("rows", rows);
    const BuiltDesign built = *build(design);
    const Gift gift(built);
    const Dressed shown = gift.at({}).shown;
    ASSERT_EQ(std::ssize(shown.net.panels), columns + rows - 2);
    int crossings = 0;
    for (std::size_t i = 0; i < shown.net.panels.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) {
        EXPECT_FALSE(testing::panelsCut(shown.net.panels[i], shown.pose[i], shown.net.panels[k],
                                        shown.pose[k], 0.05));
        if (shown.owners[i].piece == shown.owners[k].piece) continue;
        // Without its slots each would go through the other.
        Panel bare = shown.net.panels[i];
        const Bounds box = bounds(bare.outline);
        bare.outline = {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
        crossings +=
            testing::panelsCut(bare, shown.pose[i], shown.net.panels[k], shown.pose[k], 0.05);
      }
    EXPECT_EQ(crossings, (columns - 1) * (rows - 1));
  }
}

/// All but what has no lid, and tubes while nothing is in them.
TEST(Gift, OpensWhatMakersOpen) {
  const std::set<std::string_view> neverClosed{"framed-tray", "rolled-wall-tray",
                                               "tapered-cup", "platform-insert",
                                               "treat-scoop", "gusseted-bag"};
  const std::set<std::string_view> tubes{"open-sleeve", "belly-band"};
  for (const Style& style : styles())
    for (const bool filled : {false, true}) {
      Design design = giftOf(style.id);
      if (!filled)
        design = *newDesign(style.id, std::nullopt, *findCard("300gsm"), Ease::Easy,
                            ToolGrid::millimetre());
      const BuiltDesign built = *build(design);
      const Gift gift(built);
      const GiftScene closed = gift.at({});
      const GiftScene open = gift.at({.opening = kOpen});
      bool moves = closed.solids.size() != open.solids.size();
      for (std::size_t i = 0; i < closed.shown.pose.size(); ++i)
        for (const Point& corner : closed.shown.net.panels[i].outline)
          moves = moves || distance(closed.shown.pose[i].apply(corner),
                                    open.shown.pose[i].apply(corner)) > 1;
      for (std::size_t i = 0; i < closed.solids.size() && !moves; ++i)
        moves = distance(closed.solids[i].faces.at(0).at(0), open.solids[i].faces.at(0).at(0)) > 1;
      EXPECT_EQ(moves, !neverClosed.contains(style.id) && (filled || !tubes.contains(style.id)))
          << style.id << ' ' << filled;
    }
}

/// Where a straight way goes through panels.
int crossings(const Dressed& shown, Point3 from, Point3 to) {
  int count = 0;
  for (std::size_t i = 0; i < shown.net.panels.size(); ++i) {
    const Transform into = shown.pose[i].inverse();
    const Point3 a = into.apply(from);
    const Point3 b = into.apply(to);
    if ((a.z > 0) == (b.z > 0)) continue;
    const Point3 at = a + (b - a) * (a.z / (a.z - b.z));
    count += locate({at.x, at.y}, shown.net.panels[i].outline) == Side::Outside ? 0 : 1;
  }
  return count;
}

/// Both flaps of one end come out, whole, and the way into the box is free there and nowhere else.
TEST(Gift, APillowOpensAtOneEnd) {
  const BuiltDesign built = builtWith("pillow-box", {});
  const Gift gift(built);
  const Dressed closed = gift.at({}).shown;
  const Dressed open = gift.at({.opening = kOpen}).shown;
  std::set<std::string> moved;
  for (std::size_t i = 0; i < closed.net.panels.size(); ++i)
    if (distance(closed.pose[i].apply(closed.net.panels[i].outline[0]),
                 open.pose[i].apply(closed.net.panels[i].outline[0])) > 0.1 ||
        norm(closed.pose[i].normal() - open.pose[i].normal()) > 0.1)
      moved.insert(closed.net.panels[i].id.substr(0, closed.net.panels[i].id.find('#')));
  ASSERT_EQ(moved.size(), 2U);
  const std::string end = moved.begin()->substr(moved.begin()->find('/'));
  EXPECT_EQ(moved, (std::set{"front" + end, "back" + end}));

  const auto corners = [](const Dressed& shown, std::size_t i) {
    std::vector<Point3> all;
    for (const Point& p : shown.net.panels[i].outline) all.push_back(shown.pose[i].apply(p));
    return all;
  };
  int joints = 0;
  for (std::size_t i = 0; i < closed.net.panels.size(); ++i)
    for (std::size_t k = 0; k < i; ++k) {
      const std::string& a = closed.net.panels[i].id;
      const std::string& b = closed.net.panels[k].id;
      if (a.substr(0, a.find('#')) != b.substr(0, b.find('#'))) continue;
      const auto now = std::pair{corners(open, i), corners(open, k)};
      const auto before = std::pair{corners(closed, i), corners(closed, k)};
      for (std::size_t m = 0; m < before.first.size(); ++m)
        for (std::size_t n = 0; n < before.second.size(); ++n) {
          if (distance(before.first[m], before.second[n]) > 0.02) continue;
          EXPECT_LT(distance(now.first[m], now.second[n]), 0.1) << a << ' ' << b;
          ++joints;
        }
    }
  EXPECT_GT(joints, 60);

  const BuiltPiece& box = built.pieces.front();
  const Point3 middle = (box.cavityBox.low + box.cavityBox.high) / 2;
  int free = 0;
  for (const double way : {-400.0, 400.0}) {
    const Point3 out = middle + Point3{0, way, 0};
    EXPECT_GT(crossings(closed, middle, out), 0);
    free += crossings(open, middle, out) == 0 ? 1 : 0;
  }
  EXPECT_EQ(free, 1);
}

TEST(Gift, ABandGoesRoundAllPiecesTogether) {
  for (const char* style : kOfSeveral) {
    const BuiltDesign built = builtWith(style, {"belly-band"});
    ASSERT_EQ(built.ribbons.size(), 0U);
    const BuiltPiece& band = built.pieces.back();
    ASSERT_TRUE(band.role && band.role->around) << style;
    const Gift gift(built);
    const Dressed shown = gift.at({}).shown;
    const double caliper = built.design.card.caliper.mm();
    int round = 0;
    for (const Point3 along : {Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}}) {
      const Span box = reach(built, shown, true, along);
      const Span wrap = reach(built, shown, false, along);
      if (wrap.low < box.low - caliper + 0.02 && wrap.high > box.high + caliper - 0.02) ++round;
      EXPECT_NEAR(wrap.low + wrap.high, box.low + box.high, caliper) << style << ": in the middle";
    }
    EXPECT_EQ(round, 2) << style << ": round two of three axes";
    for (std::size_t i = 0; i < shown.net.panels.size(); ++i)
      for (std::size_t k = 0; k < i; ++k)
        if (shown.owners[i].piece != shown.owners[k].piece) {
          EXPECT_FALSE(testing::panelsCut(shown.net.panels[i], shown.pose[i], shown.net.panels[k],
                                          shown.pose[k], caliper / 2))
              << style << ' ' << shown.net.panels[i].id << ' ' << shown.net.panels[k].id;
        }
  }
}

TEST(Gift, ARibbonIsDrawnOnTheClosedBoxOfSeveralPiecesAndUntiedOnTheOpenOne) {
  for (const char* style : kOfSeveral) {
    const BuiltDesign built = builtWith(style, {"ribbon"});
    ASSERT_EQ(built.ribbons.size(), 1U) << style;
    EXPECT_TRUE(piecesSeen(built, {}).contains(-1)) << style;
    EXPECT_FALSE(piecesSeen(built, {.opening = kAjar}).contains(-1)) << style;
  }
}

/// No panel of one piece goes through another piece while it is opened, nor a wrap while it slides.
TEST(Gift, NothingGoesThroughAnotherPieceWhileItOpens) {
  for (const Style& style : styles())
    for (const bool banded : {false, true}) {
      const BuiltDesign built =
          banded ? builtWith(style.id, {"belly-band"}) : builtWith(style.id, {});
      const Gift gift(built);
      for (const double opening : {0.1, 0.2, 0.3, 0.4, 0.5, 0.7, 0.9, 1.0}) {
        const Dressed shown = gift.at({.opening = opening}).shown;
        const double caliper = built.design.card.caliper.mm();
        for (std::size_t i = 0; i < shown.net.panels.size(); ++i)
          for (std::size_t k = 0; k < i; ++k) {
            if (shown.owners[i].piece == shown.owners[k].piece) continue;
            ASSERT_FALSE(testing::panelsCut(shown.net.panels[i], shown.pose[i], shown.net.panels[k],
                                            shown.pose[k], caliper / 2))
                << style.id << ' ' << opening << ' ' << shown.net.panels[i].id << ' '
                << shown.net.panels[k].id;
          }
      }
    }
}

TEST(Gift, OpenedOneSeesWhatIsInIt) {
  int opened = 0;
  for (const Style& style : styles()) {
    const BuiltDesign built = builtWith(style.id, {});
    const Gift gift(built);
    if (!gift.opens()) continue;
    ++opened;
    const GiftScene scene = gift.at({.opening = kOpen});
    // From the end too: the mouth of a pillow looks along the table.
    const std::array views{standardView(), View{Angle::degrees(150), Angle::degrees(35)},
                           View{Angle::degrees(-30), Angle::degrees(75)},
                           View{Angle(), Angle::degrees(5)}};
    const bool seen = std::ranges::any_of(
        views, [&](const View& view) { return showsProduct(pictureOf(scene, view)); });
    // A pouch that is glued all round is only parted.
    if (style.id != "crossed-seam-pouch") {
      EXPECT_TRUE(seen) << style.id;
    }
  }
  EXPECT_GE(opened, 25);
}

TEST(Gift, AProductThatIsTooLargeSticksOut) {
  for (const char* style : {"two-piece-box", "straight-tuck-box", "framed-tray", "open-sleeve"}) {
    Design design = giftOf(style);
    design.product = *parseProduct("box:140x100x80mm");
    const Result<BuiltDesign> built = build(design);
    ASSERT_TRUE(built) << style;
    EXPECT_FALSE(built->problems.empty()) << style;
    EXPECT_TRUE(showsProduct(pictureAt(*built, {}))) << style;
    const Gift gift(*built);
    const GiftScene scene = gift.at({});
    int past = 0;
    for (const Point3 along : {Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}}) {
      const Span box = reach(*built, scene.shown, true, along);
      Span product;
      for (const auto& face : scene.solids.front().faces)
        for (const Point3& corner : face) product.take(dot(corner, along));
      if (product.high > box.high + 5 || product.low < box.low - 5) ++past;
    }
    EXPECT_GE(past, 2) << style;
  }
}

TEST(Gift, WhatIsLaidIntoTheBoxLiesInIt) {
  for (const char* style : {"two-piece-box", "framed-tray", "straight-tuck-box"}) {
    const BuiltDesign built = builtWith(style, {"greeting-slip"});
    const Gift gift(built);
    const GiftScene scene = gift.at({});
    const int slip = static_cast<int>(built.pieces.size()) - 1;
    ASSERT_TRUE(built.pieces.back().role) << style;
    for (const Point3 along : {Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}}) {
      const Span box = reach(built, scene.shown, true, along);
      for (std::size_t i = 0; i < scene.shown.owners.size(); ++i) {
        if (scene.shown.owners[i].piece != slip) continue;
        for (const Point& corner : scene.shown.net.panels[i].outline) {
          const double at = dot(scene.shown.pose[i].apply(corner), along);
          EXPECT_GT(at, box.low) << style;
          EXPECT_LT(at, box.high) << style;
        }
      }
    }
  }
}

/// A coarse raster of a picture in a square: its faces by their light, and where lines run.
constexpr int kCells = 24;
struct Raster {
  std::array<double, kCells * kCells> tone{};
  std::array<bool, kCells * kCells> line{};
};

Raster rasterOf(const FoldPicture& picture) {
  Raster raster;
  const Bounds& extent = picture.extent;
  const double size = std::max(extent.width(), extent.height());
  const Point low = (extent.low + extent.high) / 2 - Point{size, size} / 2;
  const double cell = size / kCells;
  for (int i = 0; i < kCells * kCells; ++i) {
    const Point at = low + Point{(i % kCells + 0.5) * cell, (i / kCells + 0.5) * cell};
    for (auto facet = picture.facets.rbegin(); facet != picture.facets.rend(); ++facet)
      if (locate(at, facet->outline) == Side::Inside) {
        const double kind = facet->panel < 0 ? 0.9 : facet->face == Face::Inside ? 0.6 : 0.3;
        raster.tone.at(static_cast<std::size_t>(i)) = kind + 0.3 * facet->light;
        break;
      }
  }
  for (const VisibleEdge& edge : picture.edges)
    for (int k = 0; k <= 100; ++k) {
      const Point at = edge.line.a + (edge.line.b - edge.line.a) * (k / 100.0) - low;
      const int x = std::clamp(static_cast<int>(at.x / cell), 0, kCells - 1);
      const int y = std::clamp(static_cast<int>(at.y / cell), 0, kCells - 1);
      raster.line.at(static_cast<std::size_t>(y * kCells + x)) = true;
    }
  return raster;
}

/// The share of cells that differ to the eye.
double unlike(const Raster& a, const Raster& b) {
  int differ = 0;
  for (std::size_t i = 0; i < a.tone.size(); ++i)
    differ += std::abs(a.tone.at(i) - b.tone.at(i)) > 0.08 || a.line.at(i) != b.line.at(i);
  return static_cast<double>(differ) / static_cast<double>(a.tone.size());
}

/// Pictures of the gallery, for one product.
TEST(Gift, AjarTwoStylesLookDifferent) {
  std::vector<std::pair<std::string, Raster>> rasters;
  for (const Style& style : styles()) {
    const BuiltDesign built = builtWith(style.id, {});
    rasters.emplace_back(style.id, rasterOf(pictureAt(built, {.opening = kAjar, .bottom = true})));
  }
  for (std::size_t i = 0; i < rasters.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      EXPECT_GT(unlike(rasters[i].second, rasters[k].second), 0.03)
          << rasters[i].first << ' ' << rasters[k].first;
}

}  // namespace
}  // namespace creasewright
