#include "pages/tiling.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "geometry/clip_to_box.h"
#include "pages/joints.h"

namespace creasewright {
namespace {

/// The stretches between joints, from the start of a side of `length` mm.
std::vector<std::pair<double, double>> stretches(const Joints& joints, double length) {
  std::vector<std::pair<double, double>> out;
  double from = 0;
  for (const double place : joints.places) {
    out.emplace_back(from, place);
    from = place;
  }
  out.emplace_back(from, length);
  return out;
}

/// mm2.
double areaWithin(const Polygon& ring, const Bounds& box) {
  const Polygon part = clipToBox(ring, box);
  return part.empty() ? 0 : std::abs(signedArea(part));
}

bool holdsCard(const Region& card, const Bounds& box) {
  constexpr double kNothing = 0.5;  // mm2
  double held = 0;
  double holes = 0;
  for (const Area& area : card) {
    held += areaWithin(area.outer, box);
    for (const Polygon& hole : area.holes) holes += std::abs(signedArea(hole));
  }
  if (held - holes > kNothing) return true;  // wherever the holes are
  for (const Area& area : card)
    for (const Polygon& hole : area.holes) held -= areaWithin(hole, box);
  return held > kNothing;
}

void addTiles(Tiling& tiling, const TiledSheet& sheet, const Joints& xs, const Joints& ys,
              double overlap) {
  const auto columns = stretches(xs, sheet.width);
  const auto rows = stretches(ys, sheet.height);
  const double half = overlap / 2;
  for (int row = 0; row < tiling.rows; ++row)
    for (int column = 0; column < tiling.columns; ++column) {
      const auto [left, right] = columns[static_cast<std::size_t>(column)];
      const auto [upper, lower] = rows[static_cast<std::size_t>(row)];
      Tile tile{columnName(column) + std::to_string(row + 1), column, row, {}, {}};
      tile.own = {{left, sheet.height - lower}, {right, sheet.height - upper}};
      tile.window = tile.own;
      if (column > 0) tile.window.low.x -= half;
      if (column + 1 < tiling.columns) tile.window.high.x += half;
      if (row > 0) tile.window.high.y += half;
      if (row + 1 < tiling.rows) tile.window.low.y -= half;
      if (holdsCard(sheet.card, tile.own)) tiling.tiles.push_back(std::move(tile));
    }
}

std::optional<Tiling> tilesIn(const TiledSheet& sheet, const TileCell& cell, double overlap,
                              JointRule rule) {
  constexpr int kFar = 1'000;  // beyond any template
  const auto room = [overlap](double length, double side) {
    return length <= side + kTileSlack || side > 2 * overlap;
  };
  if (!room(sheet.width, cell.width) || !room(sheet.height, cell.height)) return std::nullopt;
  Tiling out;
  out.sideways = cell.sideways;
  out.width = sheet.width;
  out.height = sheet.height;
  out.columns = tilesNeeded(sheet.width, cell.width, overlap);
  out.rows = tilesNeeded(sheet.height, cell.height, overlap);
  if (out.columns * out.rows > kFar) return out;
  const Joints xs = chooseJoints(sheet, true, out.columns, cell.width, overlap, rule);
  const Joints ys = chooseJoints(sheet, false, out.rows, cell.height, overlap, rule);
  if (xs.places.size() + 1 != static_cast<std::size_t>(out.columns) ||
      ys.places.size() + 1 != static_cast<std::size_t>(out.rows))
    return std::nullopt;
  out.crossed = xs.crossed + ys.crossed;
  addTiles(out, sheet, xs, ys, overlap);
  return out;
}

}  // namespace

bool Tiling::has(int column, int row) const {
  return std::ranges::any_of(
      tiles, [&](const Tile& tile) { return tile.column == column && tile.row == row; });
}

int Tiling::count() const {
  return tiles.empty() ? columns * rows : static_cast<int>(tiles.size());
}

std::string columnName(int column) {
  std::string name;
  for (int rest = column; rest >= 0; rest = rest / 26 - 1)
    name.insert(name.begin(), static_cast<char>('A' + rest % 26));
  return name;
}

int tilesNeeded(double length, double cell, double overlap) {
  constexpr double kMost = 30'000;
  if (length <= cell + kTileSlack) return 1;
  return static_cast<int>(
      std::min(std::ceil((length - overlap - kTileSlack) / (cell - overlap)), kMost));
}

TiledSheet turnedLeft(const TiledSheet& sheet) {
  const auto turn = [&](Point p) { return Point{sheet.height - p.y, p.x}; };
  TiledSheet out = sheet;
  std::swap(out.width, out.height);
  for (Area& area : out.card) {
    for (Point& p : area.outer) p = turn(p);
    for (Polygon& hole : area.holes)
      for (Point& p : hole) p = turn(p);
  }
  for (Segment& score : out.scores) score = {turn(score.a), turn(score.b)};
  return out;
}

std::optional<Tiling> planTiles(const TiledSheet& sheet, const std::vector<TileCell>& cells,
                                double overlap, JointRule rule) {
  constexpr double kNoMatter = 1;  // mm of card
  std::optional<Tiling> best;
  for (const bool turned : {false, true}) {
    const TiledSheet lying = turned ? turnedLeft(sheet) : sheet;
    for (const TileCell& cell : cells) {
      std::optional<Tiling> tiling = tilesIn(lying, cell, overlap, rule);
      if (!tiling) continue;
      tiling->turned = turned;
      const int count = tiling->count();
      if (!best || count < best->count() ||
          (count == best->count() && tiling->crossed < best->crossed - kNoMatter))
        best = std::move(tiling);
    }
  }
  return best;
}

}  // namespace creasewright
