#include "scene/under_mouse.h"

#include <cmath>

#include "geometry/polygon.h"
#include "scene/net_picture.h"
#include "session/places.h"

namespace creasewright {

namespace {

constexpr double kSameTick = 1e-3;  // mm

/// The nearest fold within reach, or -1.
int creaseNear(const BuiltPiece& piece, Point at, double reach) {
  int found = -1;
  for (std::size_t i = 0; i < piece.flat.creases.size(); ++i) {
    const double away = distanceToSegment(at, piece.flat.creases[i]);
    if (piece.net.creases[i].kind != CreaseKind::Flat && away <= reach) {
      reach = away;
      found = static_cast<int>(i);
    }
  }
  return found;
}

/// The nearest edge of a cut within reach: one part of it, or nothing.
std::vector<Segment> cutNear(const BuiltPiece& piece, Point at, double reach) {
  std::vector<Segment> found;
  for (const Polyline& line : cutLines(piece.flat)) {
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
      const Segment part{line[i], line[i + 1]};
      const double away = distanceToSegment(at, part);
      if (away <= reach) {
        reach = away;
        found = {part};
      }
    }
  }
  return found;
}

/// The edge of a panel nearest to a place, within reach, which then is as near as that.
std::optional<Handle> edgeNear(const BuiltPiece& part, int piece, std::size_t panel, Point at,
                               double& reach) {
  std::optional<Handle> found;
  const Polygon& outline = part.flat.panels[panel];
  for (std::size_t edge = 0; edge < outline.size(); ++edge) {
    const double away =
        distanceToSegment(at, {outline[edge], outline[(edge + 1) % outline.size()]});
    if (away >= reach) continue;
    reach = away;
    found = Handle{piece, part.net.panels[panel].id, static_cast<int>(edge),
                   static_cast<int>(outline.size())};
  }
  return found;
}

/// How far an upright (or level) line lies from a place along the ruler; nothing for others.
std::optional<double> awayFrom(const Segment& line, bool upright, double at) {
  const double skew = upright ? line.b.x - line.a.x : line.b.y - line.a.y;
  if (std::abs(skew) >= 1e-6) return std::nullopt;
  return std::abs((upright ? line.a.x : line.a.y) - at);
}

}  // namespace

Place placeAtTick(double along, bool upright, double reach, const BuiltDesign& built, int piece) {
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  std::vector<int> creases;
  double nearest = reach;
  for (std::size_t i = 0; i < part.flat.creases.size(); ++i) {
    if (part.net.creases[i].kind == CreaseKind::Flat) continue;
    const auto away = awayFrom(part.flat.creases[i], upright, along);
    if (!away || *away > nearest + kSameTick) continue;
    if (*away < nearest - kSameTick) creases.clear();
    nearest = std::min(nearest, *away);
    creases.push_back(static_cast<int>(i));
  }
  return creases.empty() ? Place() : placeOfCreases(built, piece, std::move(creases));
}

std::optional<Handle> handleUnder(QPointF pixel, const BuiltDesign& built, int piece,
                                  const SheetCamera& camera) {
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  if (part.role) return std::nullopt;  // what an extra takes follows from the extra
  const Point at = camera.toSheet(pixel);
  double reach = kLineReach / camera.scale();
  std::optional<Handle> found;
  for (std::size_t i = 0; i < part.flat.panels.size(); ++i)
    if (auto edge = edgeNear(part, piece, i, at, reach)) found = std::move(edge);
  return found;
}

std::vector<Movable> cornerUnder(QPointF pixel, const BuiltDesign& built, int piece,
                                 const SheetCamera& camera) {
  constexpr double kReach = 5;      // pixels
  constexpr double kShortest = 14;  // pixels
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  if (part.role) return {};
  const Point at = camera.toSheet(pixel);
  for (std::size_t i = 0; i < part.flat.panels.size(); ++i) {
    const Polygon& outline = part.flat.panels[i];
    const std::size_t corners = outline.size();
    for (std::size_t k = 0; k < corners; ++k) {
      if (distance(at, outline[k]) * camera.scale() > kReach) continue;
      const Point in = outline[k] - outline[(k + corners - 1) % corners];
      const Point out = outline[(k + 1) % corners] - outline[k];
      const double shortest = std::min(norm(in), norm(out)) * camera.scale();
      if (shortest < kShortest || std::abs(cross(unit(in), unit(out))) < 0.3) continue;
      const auto line = [&](std::size_t edge) {
        return Handle{piece, part.net.panels[i].id, static_cast<int>(edge),
                      static_cast<int>(corners)};
      };
      return {line((k + corners - 1) % corners), line(k)};
    }
  }
  return {};
}

std::optional<BlankDistance> distanceOf(const DimensionLabel& label, const BuiltDesign& built,
                                        int piece) {
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  if (part.role) return std::nullopt;
  // Of the blank's own size the level label says the width; of a score the turned one does.
  if (!label.ofScore) return BlankDistance{piece, !label.turned, {}};
  const Place tick = placeAtTick(label.mm, label.turned, kSameTick, built, piece);
  if (tick.creases.empty()) return std::nullopt;
  // The fold's own edge: another panel may have one in line with it that moves otherwise.
  const Segment& line = tick.lines.front();
  const Crease& crease = part.net.creases[static_cast<std::size_t>(tick.creases.front())];
  double reach = kSameTick;
  auto handle =
      edgeNear(part, piece, static_cast<std::size_t>(crease.child), (line.a + line.b) / 2, reach);
  if (!handle) return std::nullopt;
  return BlankDistance{piece, label.turned, std::move(handle)};
}

Place placeUnder(QPointF pixel, const BuiltDesign& built, int piece, const SheetCamera& camera,
                 const std::vector<DimensionLabel>& labels) {
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  const Point at = camera.toSheet(pixel);
  const double reach = kLineReach / camera.scale();
  if (const int crease = creaseNear(part, at, reach); crease >= 0)
    return placeOfCreases(built, piece, {crease});
  if (std::vector<Segment> cut = cutNear(part, at, reach); !cut.empty())
    return placeOfLines(built, piece, std::move(cut));
  if (const int panel = panelAt(part, at); panel >= 0) return placeOfPanel(built, piece, panel);
  for (const DimensionLabel& label : labels)
    if (label.ofScore && label.area().contains(pixel))
      return placeAtTick(label.mm, label.turned, kSameTick, built, piece);
  return {};
}

}  // namespace creasewright
