#include "pages/marks.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "drawing/hatching.h"

namespace creasewright {
namespace {

constexpr double kText = 2.4;

Polygon rectangle(const Bounds& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

Bounds boxOf(const TextItem& text, const Wording& wording) {
  return bounds(textBox(text, wording(text.label)));
}

/// The tile's own part of the page: the cell without half the overlap on joined sides.
Bounds ownPart(const Tiling& tiling, const Tile& tile) {
  Bounds own = tiling.frame.cell;
  const double half = tiling.overlap / 2;
  if (tile.column > 0) own.low.x += half;
  if (tile.column + 1 < tiling.columns) own.high.x -= half;
  if (tile.row > 0) own.high.y -= half;
  if (tile.row + 1 < tiling.rows) own.low.y += half;
  return own;
}

struct JoinedSide {
  Segment line;       ///< on the page, running so that the tile lies to its left
  std::string other;  ///< name of the neighbour
};

std::vector<JoinedSide> joinedSides(const Tiling& tiling, const Tile& tile, const Bounds& own) {
  const auto name = [&](int columns, int rows) {
    return columnName(tile.column + columns) + std::to_string(tile.row + rows + 1);
  };
  const Polygon c = rectangle(own);
  std::vector<JoinedSide> sides;
  if (tile.row + 1 < tiling.rows) sides.push_back({{c[0], c[1]}, name(0, 1)});
  if (tile.column + 1 < tiling.columns) sides.push_back({{c[1], c[2]}, name(1, 0)});
  if (tile.row > 0) sides.push_back({{c[2], c[3]}, name(0, -1)});
  if (tile.column > 0) sides.push_back({{c[3], c[0]}, name(-1, 0)});
  return sides;
}

/// Adds a text at the first of `places` where there is room.
void addWhereFree(Drawing& out, TextItem text, const std::vector<Point>& places,
                  const Wording& wording, FreeSpace& space) {
  for (const Point place : places) {
    text.at = place;
    const Bounds box = boxOf(text, wording);
    if (!space.isFree(box)) continue;
    space.block(box);
    out.texts.push_back(std::move(text));
    return;
  }
}

void addCorner(Drawing& out, const Tile& tile, Point corner, Point inward, const Wording& wording,
               FreeSpace& space) {
  PathItem circles{.role = Role::Positions, .rings = {}};
  for (const double radius : {3.0, 5.0, 7.0}) {
    const Point from = corner + Point{inward.x * radius, 0};
    Polyline quarter{from};
    const Polyline rest = arc(from, corner, inward.x * inward.y > 0 ? 90 : -90, 0.01);
    quarter.insert(quarter.end(), rest.begin(), rest.end());
    space.blockLine(quarter);
    circles.rings.push_back(std::move(quarter));
  }
  out.paths.push_back(std::move(circles));
  std::vector<Point> places;
  for (int far = 0; far < 12; ++far) {
    places.push_back(corner + inward * (8.0 + far) - Point{0, kText / 3});
    places.push_back(corner + Point{inward.x * 4, inward.y * (10.0 + far)});
    places.push_back(corner + Point{inward.x * (11.0 + far), inward.y * 3 - kText / 3});
  }
  addWhereFree(out,
               {.role = Role::Positions,
                .label = Label::plain(tile.name),
                .at = {},
                .height = kText,
                .anchor = Anchor::Centre},
               places, wording, space);
}

void addNeighbour(Drawing& out, const JoinedSide& side, const Wording& wording, FreeSpace& space) {
  const Point along = unit(side.line.b - side.line.a);
  const Point inward = turnLeft(along);
  // Readable from below or from the right.
  const double turn = std::abs(along.y) > 0.5 ? 90 : 0;
  // Clear of the frame by a cell: a text grows up from its baseline, or left when turned.
  const bool below = turn == 0 ? inward.y > 0 : inward.x < 0;
  const double baseline = below ? 2.0 : 3.6;
  std::vector<Point> places;
  const Point middle = (side.line.a + side.line.b) / 2 + inward * baseline;
  for (double shift = 0; shift < length(side.line) / 2 - 15; shift += 5) {
    places.push_back(middle + along * shift);
    places.push_back(middle - along * shift);
  }
  addWhereFree(out,
               {.role = Role::Positions,
                .label = {"joins", {side.other}, {}},
                .at = {},
                .height = kText,
                .anchor = Anchor::Centre,
                .turnDegrees = turn},
               places, wording, space);
}

}  // namespace

Drawing checkBar(double millimetres, double division, const std::string& words, bool upright) {
  constexpr double kDepth = 4.6;
  constexpr double kLine = 2.3;  // height of the bar's line
  const double textRoom = textWidth(words, kText) + 1.5;
  Drawing bar{millimetres + textRoom, kDepth, {}, {}};
  PathItem lines{.role = Role::Legend, .rings = {{{0, kLine}, {millimetres, kLine}}}};
  for (int i = 0; i * division <= millimetres + 1e-9; ++i) {
    const double x = i * division;
    const bool end = i == 0 || x > millimetres - 1e-9;
    const double stroke = end ? 1.8 : 0.7;
    lines.rings.push_back({{x, kLine - stroke}, {x, kLine + stroke}});
  }
  bar.paths.push_back(std::move(lines));
  bar.texts.push_back({.role = Role::Legend,
                       .label = Label::plain(words),
                       .at = {millimetres + 1.2, kLine - 0.36 * kText},
                       .height = kText});
  return upright ? turnedLeft(std::move(bar)) : bar;
}

std::vector<Drawing> checkBars() {
  return {checkBar(100, 10, "100 mm", false), checkBar(101.6, 25.4, "4 in", false),
          checkBar(100, 10, "100 mm", true), checkBar(101.6, 25.4, "4 in", true)};
}

Drawing alignmentMarks(const Tiling& tiling, const Tile& tile, const Wording& wording,
                       FreeSpace& space) {
  Drawing out{tiling.frame.width, tiling.frame.height, {}, {}};
  const Bounds own = ownPart(tiling, tile);
  const std::vector<JoinedSide> sides = joinedSides(tiling, tile, own);
  PathItem frame{.role = Role::Positions, .rings = {}};
  for (const JoinedSide& side : sides) {
    frame.rings.push_back({side.line.a, side.line.b});
    space.blockLine(frame.rings.back());
  }
  if (!sides.empty()) out.paths.push_back(std::move(frame));
  for (const Point corner : rectangle(own)) {
    const bool joined = std::any_of(sides.begin(), sides.end(), [&](const JoinedSide& side) {
      return side.line.a == corner || side.line.b == corner;
    });
    const Point inward{corner.x == own.low.x ? 1.0 : -1.0, corner.y == own.low.y ? 1.0 : -1.0};
    if (joined) addCorner(out, tile, corner, inward, wording, space);
  }
  for (const JoinedSide& side : sides) addNeighbour(out, side, wording, space);
  return out;
}

Drawing pageMap(const Tiling& tiling, const Tile& tile, const Bounds& blank, double width,
                double height) {
  const Bounds all{{tiling.tiles.front().window.low.x, tiling.tiles.back().window.low.y},
                   {tiling.tiles.back().window.high.x, tiling.tiles.front().window.high.y}};
  const double scale = std::min(width / all.width(), height / all.height());
  const auto place = [&](const Bounds& box) {
    return Bounds{(box.low - all.low) * scale, (box.high - all.low) * scale};
  };
  Drawing map{all.width() * scale, all.height() * scale, {}, {}};
  PathItem grid{.role = Role::Positions, .rings = {}, .closed = true};
  for (const Tile& each : tiling.tiles) {
    Bounds part = each.window;
    const double half = tiling.overlap / 2;
    if (each.column > 0) part.low.x += half;
    if (each.column + 1 < tiling.columns) part.high.x -= half;
    if (each.row > 0) part.high.y -= half;
    if (each.row + 1 < tiling.rows) part.low.y += half;
    grid.rings.push_back(rectangle(place(part)));
    if (each.name != tile.name) continue;
    PathItem shading{.role = Role::Positions, .rings = {}};
    for (const Segment& line : hatch({grid.rings.back()}, 1, 45))
      shading.rings.push_back({line.a, line.b});
    map.paths.push_back(std::move(shading));
  }
  map.paths.push_back(std::move(grid));
  map.paths.push_back({.role = Role::Positions,
                       .rings = {rectangle(place(blank))},
                       .closed = true,
                       .like = Role::Cut});
  return map;
}

}  // namespace creasewright
