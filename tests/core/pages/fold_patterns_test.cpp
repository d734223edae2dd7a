#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

#include "document/paper_way.h"
#include "drawing/contrast.h"
#include "drawing/role.h"
#include "extras/extra_kind.h"
#include "fit/card_pattern.h"
#include "folding/surfaces/upright.h"
#include "net/pose.h"
#include "pages/design_picture.h"
#include "pages/dressing.h"
#include "pages/fold_drawing.h"
#include "patterns/pattern.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr Colour kGround{0xF6, 0xEC, 0xD0};
constexpr Colour kOne{0xC2, 0x36, 0x2B};
constexpr Colour kTwo{0x5B, 0x86, 0xC4};
constexpr double kScale = 9;    // mm, of the dots
constexpr double kDot = 0.2;    // of that, their radius
constexpr double kRim = 0.012;  // of that: points so near to a rim are not judged

Design onPaper(std::string_view style, const std::string& pattern) {
  Design design = *newDesign(style, {}, *findCard("300gsm"), Ease::Easy, ToolGrid::millimetre());
  design.card.colours = *withPattern({}, pattern);
  return design;
}

std::string dots(const char* side) {
  return "dots:scale=9mm:colours=" + hexText(kGround) + "," + hexText(kOne) + "," + hexText(kTwo) +
         ":side=" + side;
}

/// What is printed at a point of the paper, by the definition of the dots: one colour where four
/// repeats meet, the other in the middle of each. Nothing near a rim.
std::optional<Colour> printedAt(Point p) {
  const auto far = [&](double shift) {
    const double x = p.x / kScale - shift;
    const double y = p.y / kScale - shift;
    return std::hypot(x - std::round(x), y - std::round(y));
  };
  for (const double shift : {0.0, 0.5})
    if (std::abs(far(shift) - kDot) < kRim) return std::nullopt;
  if (far(0) < kDot) return kOne;
  return far(0.5) < kDot ? kTwo : kGround;
}

/// The fill of what is painted last at a point, even-odd, and whether it is card seen from inside.
struct PaperSeen {
  Colour colour{255, 255, 255};
  Surface surface = Surface::Product;
};
PaperSeen paperAt(Point at, const Drawing& picture) {
  PaperSeen seen;
  for (const PathItem& item : picture.paths) {
    if (item.role != Role::Face) continue;
    bool inside = false;
    for (const Polygon& ring : item.rings) inside ^= locate(at, ring) == Side::Inside;
    if (inside) seen = {item.colour.value_or(Colour{1, 1, 1}), item.surface};
  }
  return seen;
}

/// Whether nothing of the net lies between a point of a panel and the eye, by a ray.
bool isSeen(Point3 from, int panel, const Net& net, const Pose& pose, Point3 towardsEye) {
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    if (static_cast<int>(i) == panel) continue;
    const double rate = dot(pose[i].normal(), towardsEye);
    if (std::abs(rate) < 1e-6) continue;
    const double at = dot(pose[i].normal(), pose[i].apply(Point{}) - from) / rate;
    if (at < -0.05) continue;  // layers of one plane hide one another as their order says
    const Point3 there = pose[i].inverse().apply(from + towardsEye * at);
    if (locate({there.x, there.y}, net.panels[i].outline, 0.05) != Side::Outside) return false;
  }
  return true;
}

/// Judges points of every panel that can be seen from one side; how many there were.
int fullSizeRepeats(const BuiltDesign& built, bool behind) {
  const BuiltPiece& box = built.pieces.front();
  const Point3 up = uprightOf(box);
  const View view = frontView(standardView(), up);
  const Camera eye = camera(view, up);
  const FoldPicture picture = drawFolded(box.net, box.folded, view, up);
  const Dressed shown = undressed(built, box, box.folded);
  const Drawing drawing = drawFold(picture, shown.looks, 0);
  // The paper lies on the net as it is drawn, a dot in the middle of panel 0, its way up as told;
  // the outside is the other side of what is drawn.
  const Point way = paperUp(built, box);
  const Point right = Point{way.y, -way.x} * (behind ? 1 : -1);
  const Bounds first = bounds(box.net.panels[0].outline);
  const Point middle = (first.low + first.high) / 2;
  const Pose flat = pose(box.net, 0.0);
  int judged = 0;
  for (std::size_t i = 0; i < box.net.panels.size(); ++i) {
    const Transform& place = box.folded[i];
    const double facing = dot(place.normal(), eye.towardsEye);
    if (std::abs(facing) < 0.1 || (facing > 0) != behind) continue;
    const Panel& panel = box.net.panels[i];
    const Bounds around = bounds(panel.outline);
    for (int k = 0; k < 40; ++k) {
      const Point p = around.low + Point{around.width() * std::fmod(0.137 + k * 0.6180339887, 1),
                                         around.height() * std::fmod(0.71 + k * 0.7548776662, 1)};
      const bool cut = std::ranges::any_of(panel.openings, [&](const Polygon& opening) {
        return locate(p, opening, 0.1) != Side::Outside;
      });
      if (cut || locate(p, panel.outline, 0.1) != Side::Inside) continue;
      const Point3 there = place.apply(p);
      if (!isSeen(there, static_cast<int>(i), box.net, box.folded, eye.towardsEye)) continue;
      const Point3 onNet = flat[i].apply(p);
      const Point from{onNet.x - middle.x, onNet.y - middle.y};
      const auto expected = printedAt({dot(from, right), dot(from, way)});
      if (!expected) continue;
      const PaperSeen seen = paperAt(eye.project(there) - picture.extent.low, drawing);
      EXPECT_EQ(hexText(seen.colour), hexText(*expected)) << panel.id << ' ' << p.x << ' ' << p.y;
      ++judged;
    }
  }
  return judged;
}

// Law: on every box the print is that of one paper from which its whole net is cut, on the side
// it is printed on, wherever a ray from the eye meets that side first.
TEST(FoldPatterns, OnePaperRunsRoundEveryBox) {
  int inside = 0;
  for (const Style& style : styles()) {
    SCOPED_TRACE(std::string(style.id));
    const auto outer = build(onPaper(style.id, dots("face")));
    ASSERT_TRUE(outer);
    EXPECT_GE(fullSizeRepeats(*outer, false), 15);
    const auto inner = build(onPaper(style.id, dots("back")));
    ASSERT_TRUE(inner);
    inside += fullSizeRepeats(*inner, true);
  }
  EXPECT_GT(inside, 200);
}

// Law: on every upright face the print of a mat stands upright, and reads from its left to its
// right.
TEST(FoldPatterns, StandUprightOnEveryMat) {
  int upright = 0;
  for (const Style& style : styles()) {
    Design design = *newDesign(style.id, {}, *findCard("300gsm"), Ease::Easy, ToolGrid::none());
    Extra mats = standardExtra(**findExtraKind("mats"), design.card);
    mats.card.colours = *withPattern({}, "leaves");
    design.extras = {mats};
    const auto built = build(design);
    ASSERT_TRUE(built) << style.id;
    for (const BuiltPiece& piece : built->pieces) {
      if (piece.role) continue;
      const Dressed shown = dressed(*built, piece);
      const Point3 up = uprightOf(piece);
      for (std::size_t i = piece.net.panels.size(); i < shown.net.panels.size(); ++i) {
        const PanelLook& look = shown.looks[i];
        if (!look.colours.pattern) continue;
        const Transform& place = shown.pose[i];
        const Point3 way = place.turn({look.paper.y.x, look.paper.y.y, 0});
        const Point3 right = place.turn({look.paper.x.x, look.paper.x.y, 0});
        const Point3 outwards = place.normal() * -1;
        EXPECT_GT(dot(cross(right, way), outwards), 0.999) << style.id << i;
        if (std::abs(dot(outwards, up)) > 0.05) continue;
        ++upright;
        EXPECT_GT(dot(way, up), 0.99) << style.id << ' ' << i;
      }
    }
  }
  EXPECT_GT(upright, 60);
}

// Law: every edge has a contrast of 3:1 (WCAG 2.1 for graphics) to each colour of the paper beside
// it, in its own tone or in that of its casing; but on a dark paper only to what it is on the
// whole.
TEST(FoldPatterns, EdgesShowOnEveryPattern) {
  int cased = 0;
  for (const PatternKind& pattern : patterns()) {
    const auto built = build(onPaper("gable-box", std::string(pattern.id)));
    ASSERT_TRUE(built);
    const Drawing picture = pictureOf(*built, {.folded = true});
    const Colour ink = roleStyle(Role::Edge).colour;
    const auto has = [&](auto tone) {
      return std::ranges::any_of(picture.paths, [&](const PathItem& item) {
        return item.role == Role::Edge && tone(item);
      });
    };
    const bool casing = has([](const PathItem& item) { return item.width > 1; });
    const bool light = has([](const PathItem& item) { return item.colour && item.width == 1; });
    cased += casing;
    const PaperPattern paper = usualPaper(pattern);
    for (const double shade : {0.0, 1.0}) {
      if (light) continue;
      for (const Colour& colour : coloursOf(paper)) {
        const Colour lit = faceColour(shade, Surface::Outside, colour);
        EXPECT_TRUE(contrast(ink, lit) >= 3 || (casing && contrast(kLightEdge, lit) >= 3))
            << pattern.id << ' ' << hexText(colour);
      }
    }
    if (light) {
      const Colour mean = faceColour(0, Surface::Outside, meanColour(paper));
      EXPECT_GE(contrast(kLightEdge, mean), 3) << pattern.id;
    }
  }
  EXPECT_GE(cased, 1);
}

}  // namespace
}  // namespace creasewright
