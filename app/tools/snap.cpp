#include "tools/snap.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace creasewright {

namespace {

void addRing(const Polygon& ring, std::vector<Segment>& lines) {
  for (std::size_t i = 0; i < ring.size(); ++i)
    lines.push_back({ring[i], ring[(i + 1) % ring.size()]});
}

/// Rims of panels and openings and all folds, as far as they come within reach.
std::vector<Segment> linesNear(const BuiltPiece& piece, Point at, double reach) {
  std::vector<Segment> lines;
  for (const Polygon& panel : piece.flat.panels) addRing(panel, lines);
  for (const auto& openings : piece.flat.openings)
    for (const Polygon& opening : openings) addRing(opening, lines);
  lines.insert(lines.end(), piece.flat.creases.begin(), piece.flat.creases.end());
  std::erase_if(lines, [&](const Segment& line) {
    return length(line) < 1e-9 || distanceToSegment(at, line) > reach;
  });
  return lines;
}

Point nearestOn(const Segment& line, Point at, bool beyond) {
  const Point way = line.b - line.a;
  const double square = dot(way, way);
  if (square < 1e-18) return line.a;
  const double share = dot(at - line.a, way) / square;
  return line.a + way * (beyond ? share : std::clamp(share, 0.0, 1.0));
}

std::optional<Point> crossing(const Segment& a, const Segment& b) {
  const Point u = a.b - a.a;
  const Point v = b.b - b.a;
  const double turn = cross(u, v);
  if (std::abs(turn) < 1e-9) return std::nullopt;
  const double s = cross(b.a - a.a, v) / turn;
  const double t = cross(b.a - a.a, u) / turn;
  const bool within = s >= 0 && s <= 1 && t >= 0 && t <= 1;
  return within ? std::optional(a.a + u * s) : std::nullopt;
}

/// The nearest of some points within reach.
class Nearest {
 public:
  Nearest(Point at, double reach) : at_(at), away_(reach) {}
  void offer(Point point, SnapKind kind) {
    const double away = distance(at_, point);
    if (away > away_ || (found_ && away == away_)) return;
    away_ = away;
    found_ = Snap{point, kind, std::nullopt};
  }
  [[nodiscard]] const std::optional<Snap>& found() const { return found_; }

 private:
  Point at_;
  double away_;
  std::optional<Snap> found_;
};

std::optional<Snap> gridSnap(const BuiltPiece& piece, Point at, double reach, ToolGrid grid) {
  if (grid.isNone()) return std::nullopt;
  const Point place{grid.nearest(Length::mm(at.x)).mm(), grid.nearest(Length::mm(at.y)).mm()};
  const bool inside =
      place.x >= 0 && place.y >= 0 && place.x <= piece.flat.width && place.y <= piece.flat.height;
  if (!inside || distance(place, at) > reach) return std::nullopt;
  return Snap{place, SnapKind::Grid, std::nullopt};
}

}  // namespace

Snap snapAt(const BuiltPiece& piece, Point at, double reach, ToolGrid grid) {
  const std::vector<Segment> lines = linesNear(piece, at, reach);
  Nearest points(at, reach);
  Nearest middles(at, reach);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    points.offer(lines[i].a, SnapKind::Corner);
    points.offer(lines[i].b, SnapKind::Corner);
    middles.offer((lines[i].a + lines[i].b) / 2, SnapKind::Middle);
  }
  for (std::size_t i = 0; i < lines.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (const auto point = crossing(lines[i], lines[k])) points.offer(*point, SnapKind::Crossing);
  if (points.found()) return *points.found();
  if (middles.found()) return *middles.found();
  const auto away = [&](const Segment& line) { return distanceToSegment(at, line); };
  if (const auto line = std::ranges::min_element(lines, {}, away); line != lines.end())
    return {nearestOn(*line, at, false), SnapKind::Line, *line};
  return gridSnap(piece, at, reach, grid).value_or(Snap{at, SnapKind::Nothing, std::nullopt});
}

Measurement measureBetween(const Snap& first, const Snap& second) {
  Measurement measured{first.at, second.at, 0, std::nullopt};
  if (first.line && second.line) {
    const Point u = unit(first.line->b - first.line->a);
    const Point v = unit(second.line->b - second.line->a);
    const double turn = std::min(1.0, std::abs(cross(u, v)));
    if (turn > 1e-6)
      measured.degrees = std::asin(turn) * 180 / std::numbers::pi;
    else
      measured.to = nearestOn(*second.line, first.at, true);
  } else if (second.line) {
    measured.to = nearestOn(*second.line, first.at, true);
  } else if (first.line) {
    measured.from = nearestOn(*first.line, second.at, true);
  }
  measured.distance = distance(measured.from, measured.to);
  return measured;
}

}  // namespace creasewright
