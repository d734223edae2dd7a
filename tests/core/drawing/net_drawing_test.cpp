#include "drawing/net_drawing.h"

#include <algorithm>
#include <set>

#include <gtest/gtest.h>

#include "drawing/arrange.h"
#include "geometry/region.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::string inInches(const Label& label) {
  if (label.code.empty()) return label.literal;
  LengthFormat format;
  format.unit = Unit::Inch;
  return formatLength(std::get<Length>(label.values.at(0)), format);
}

std::vector<Piece> allPieces() {
  std::vector<Piece> pieces;
  const Workbench bench{Length::mm(0.3), ToolGrid::sixteenthInch()};
  for (const Style& style : styles()) {
    for (Piece& piece : style.build(standardParameters(style), bench)) {
      pieces.push_back(std::move(piece));
    }
  }
  return pieces;
}

bool overlap(const Polygon& a, const Polygon& b) {
  return area(intersect(region(a), region(b))) > 1e-6;
}

TEST(NetDrawing, DimensionLabelsNeverOverlapEachOtherOrTheBlank) {
  const std::vector<Piece> pieces = allPieces();
  ASSERT_FALSE(pieces.empty());
  for (const Piece& piece : pieces) {
    const FlatNet flat = flatten(piece.net);
    const NetDrawing net = drawNet(piece.net, flat, {});
    const Point o = net.origin;
    std::vector<Polygon> boxes{{o, o + Point{flat.width, 0}, o + Point{flat.width, flat.height},
                                o + Point{0, flat.height}}};
    for (const TextItem& text : net.drawing.texts) {
      boxes.push_back(textBox(text, inInches(text.label)));
      const Bounds box = bounds(boxes.back());
      EXPECT_GE(box.low.x, 0) << piece.name;
      EXPECT_GE(box.low.y, 0) << piece.name;
      EXPECT_LE(box.high.x, net.drawing.width) << piece.name;
      EXPECT_LE(box.high.y, net.drawing.height) << piece.name;
    }
    EXPECT_GE(boxes.size(), piece.net.creases.empty() ? 3U : 4U) << piece.name;
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      for (std::size_t k = 0; k < i; ++k) {
        EXPECT_FALSE(overlap(boxes[i], boxes[k])) << piece.name << ' ' << i << ' ' << k;
      }
    }
  }
}

TEST(NetDrawing, EveryScoreParallelToASideIsLabelledOnce) {
  const Piece piece = allPieces().front();
  const FlatNet flat = flatten(piece.net);
  const NetDrawing net = drawNet(piece.net, flat, {});
  std::multiset<std::int64_t> labels;
  for (const TextItem& text : net.drawing.texts) {
    labels.insert(std::get<Length>(text.label.values.at(0)).nm());
  }
  for (const Segment& s : flat.creases) {
    const bool upright = std::abs(s.a.x - s.b.x) < 1e-6;
    const bool level = std::abs(s.a.y - s.b.y) < 1e-6;
    if (upright || level) {
      EXPECT_EQ(labels.count(Length::mm(upright ? s.a.x : s.a.y).nm()) > 0, true) << s.a.x;
    }
  }
}

TEST(NetDrawing, OutlinesAreClosedChains) {
  for (const Piece& piece : allPieces()) {
    const FlatNet flat = flatten(piece.net);
    const Drawing lines = drawNetLines(piece.net, flat, {});
    double drawn = 0;
    for (const PathItem& item : lines.paths) {
      if (item.role != Role::Cut || !item.closed) continue;
      for (const Polygon& ring : item.rings) {
        EXPECT_NE(ring.front(), ring.back());
        drawn += perimeter(ring);
      }
    }
    double outline = 0;
    for (const Area& each : flat.outline) {
      outline += perimeter(each.outer);
      for (const Polygon& hole : each.holes) outline += perimeter(hole);
    }
    EXPECT_NEAR(drawn, outline, 1e-6) << piece.name;
  }
}

TEST(NetDrawing, FoldDirectionAndKindChooseTheRole) {
  Net net;
  const Polygon square{{0, 0}, {10, 0}, {10, 10}, {0, 10}};
  const std::vector<std::string> edges{"inner", "right", "outer", "left"};
  for (const char* id : {"a", "a/b", "a/c", "a/d", "a/e"})
    net.panels.push_back({id, square, edges, {}, false});
  net.stages = {"all"};
  const std::vector<Segment> sides{
      {{0, 0}, {10, 0}}, {{10, 0}, {10, 10}}, {{10, 10}, {0, 10}}, {{0, 10}, {0, 0}}};
  const std::vector<std::pair<double, CreaseKind>> folds{{90, CreaseKind::Score},
                                                         {-90, CreaseKind::Score},
                                                         {90, CreaseKind::Perforated},
                                                         {0, CreaseKind::Flat}};
  for (int i = 0; i < 4; ++i) {
    const auto k = static_cast<std::size_t>(i);
    net.creases.push_back({0, i + 1, sides[k], Angle::degrees(folds[k].first), 1, folds[k].second});
  }
  const Drawing lines = drawNetLines(net, flatten(net), {});
  const auto count = [&](Role role) {
    std::size_t found = 0;
    for (const PathItem& item : lines.paths) found += item.role == role ? item.rings.size() : 0;
    return found;
  };
  EXPECT_EQ(count(Role::Valley), 1U);
  EXPECT_EQ(count(Role::Mountain), 1U);
  EXPECT_EQ(count(Role::Perforation), 1U);
}

}  // namespace
}  // namespace creasewright
