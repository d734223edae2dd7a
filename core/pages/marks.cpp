#include "pages/marks.h"

#include <algorithm>

#include "drawing/arrange.h"

namespace creasewright {
namespace {

constexpr double kMarkText = 2.4;

Polygon rectangle(const Bounds& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
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
  const auto add = [&](Point a, Point b, int columns, int rows) {
    if (tiling.has(tile.column + columns, tile.row + rows))
      sides.push_back({{a, b}, name(columns, rows)});
  };
  add(c[0], c[1], 0, 1);
  add(c[1], c[2], 1, 0);
  add(c[2], c[3], 0, -1);
  add(c[3], c[0], -1, 0);
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
    places.push_back(corner + inward * (8.0 + far) - Point{0, kMarkText / 3});
    places.push_back(corner + Point{inward.x * 4, inward.y * (10.0 + far)});
    places.push_back(corner + Point{inward.x * (11.0 + far), inward.y * 3 - kMarkText / 3});
  }
  addWhereFree(out,
               {.role = Role::Positions,
                .label = Label::plain(tile.name),
                .at = {},
                .height = kMarkText,
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
                .height = kMarkText,
                .anchor = Anchor::Centre,
                .turnDegrees = turn},
               places, wording, space);
}

}  // namespace

Drawing checkBar(double millimetres, double division, const std::string& words, bool upright) {
  constexpr double kDepth = 4.6;
  constexpr double kLine = 2.3;  // height of the bar's line
  const double textRoom = textWidth(words, kMarkText) + 1.5;
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
                       .at = {millimetres + 1.2, kLine - 0.36 * kMarkText},
                       .height = kMarkText});
  return upright ? turnedLeft(std::move(bar)) : bar;
}

namespace {

constexpr double kInchMm = 25.4;

/// Lengths and words of the two bars.
struct BarSizes {
  double metric = 100;
  int inches = 4;
  std::string mm = "100 mm";
  std::string in = "4 in";
};

BarSizes barSizes(double room) {
  constexpr double kWhole = 4 * kInchMm + 12;  // the longer bar with its words
  return room < kWhole ? BarSizes{50, 2, "50 mm", "2 in"} : BarSizes{};
}

}  // namespace

std::vector<Drawing> checkBars(double room) {
  const BarSizes sizes = barSizes(room);
  const double inches = sizes.inches * kInchMm;
  return {checkBar(sizes.metric, 10, sizes.mm, false), checkBar(inches, kInchMm, sizes.in, false),
          checkBar(sizes.metric, 10, sizes.mm, true), checkBar(inches, kInchMm, sizes.in, true)};
}

Drawing checkBarPair(double room, bool upright) {
  constexpr double kPairText = 2.2;
  constexpr double kUpper = 4.0;
  constexpr double kLower = 2.2;
  const BarSizes sizes = barSizes(room);
  const double inches = sizes.inches * kInchMm;
  const double end = std::max(sizes.metric, inches) + 1.2;
  Drawing pair{end + textWidth(sizes.mm, kPairText) + 0.3, 6, {}, {}};
  const auto add = [&pair](double size, double division, double y, double tick) {
    PathItem lines{.role = Role::Legend, .rings = {{{0, y}, {size, y}}}};
    for (int i = 0; i * division <= size + 1e-9; ++i) {
      const double x = i * division;
      const bool last = i == 0 || x > size - 1e-9;
      lines.rings.push_back({{x, y}, {x, y + (last ? 1.8 : 0.9) * tick}});
    }
    pair.paths.push_back(std::move(lines));
  };
  add(sizes.metric, 10, kUpper, 1);
  add(inches, kInchMm, kLower, -1);
  const auto say = [&](const std::string& words, double y) {
    pair.texts.push_back(
        {.role = Role::Legend, .label = Label::plain(words), .at = {end, y}, .height = kPairText});
  };
  say(sizes.mm, 3.7);
  say(sizes.in, 0.7);
  return upright ? turnedLeft(std::move(pair)) : pair;
}

Drawing alignmentMarks(const Tiling& tiling, const Tile& tile, Point shift, const Wording& wording,
                       FreeSpace& space) {
  const Bounds own{tile.own.low + shift, tile.own.high + shift};
  Drawing out;
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

Drawing pageMap(const Tiling& tiling, const Tile& tile, double width, double height) {
  const double scale = std::min(width / tiling.width, height / tiling.height);
  const auto place = [&](const Bounds& box) { return Bounds{box.low * scale, box.high * scale}; };
  Drawing map{tiling.width * scale, tiling.height * scale, {}, {}};
  PathItem grid{.role = Role::Positions, .rings = {}, .closed = true};
  for (const Tile& each : tiling.tiles) {
    grid.rings.push_back(rectangle(place(each.own)));
    const Bounds& box = bounds(grid.rings.back());
    constexpr double kName = 2.2;
    if (box.width() > textWidth(each.name, kName) && box.height() > 1.3 * kName)
      map.texts.push_back({.role = Role::Positions,
                           .label = Label::plain(each.name),
                           .at = (box.low + box.high) / 2 - Point{0, 0.36 * kName},
                           .height = kName,
                           .anchor = Anchor::Centre});
    if (each.name != tile.name) continue;
    map.paths.push_back({.role = Role::Positions,
                         .rings = {grid.rings.back()},
                         .closed = true,
                         .filled = true,
                         .like = Role::Waste});
  }
  map.paths.push_back(std::move(grid));
  map.paths.push_back({.role = Role::Positions,
                       .rings = {rectangle(place({{0, 0}, {tiling.width, tiling.height}}))},
                       .closed = true,
                       .like = Role::Cut});
  return map;
}

}  // namespace creasewright
