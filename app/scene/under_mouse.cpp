#include "scene/under_mouse.h"

#include <cmath>

#include "geometry/polygon.h"
#include "scene/net_picture.h"
#include "session/places.h"

namespace creasewright {

namespace {

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

bool isAlong(const Segment& line, bool upright, double at, double reach) {
  const double skew = upright ? line.b.x - line.a.x : line.b.y - line.a.y;
  const double place = upright ? line.a.x : line.a.y;
  return std::abs(skew) < 1e-6 && std::abs(place - at) <= reach;
}

}  // namespace

Place placeAtTick(double along, bool upright, double reach, const BuiltDesign& built, int piece) {
  const BuiltPiece& part = built.pieces.at(static_cast<std::size_t>(piece));
  double nearest = reach;
  for (std::size_t i = 0; i < part.flat.creases.size(); ++i) {
    const Segment& line = part.flat.creases[i];
    if (part.net.creases[i].kind != CreaseKind::Flat && isAlong(line, upright, along, nearest))
      nearest = std::abs((upright ? line.a.x : line.a.y) - along);
  }
  std::vector<int> creases;
  for (std::size_t i = 0; i < part.flat.creases.size(); ++i) {
    const Segment& line = part.flat.creases[i];
    if (part.net.creases[i].kind != CreaseKind::Flat &&
        isAlong(line, upright, along, nearest + 1e-3))
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
  for (std::size_t i = 0; i < part.flat.panels.size(); ++i) {
    const Polygon& outline = part.flat.panels[i];
    for (std::size_t edge = 0; edge < outline.size(); ++edge) {
      const double away =
          distanceToSegment(at, {outline[edge], outline[(edge + 1) % outline.size()]});
      if (away < reach) {
        reach = away;
        found = Handle{piece, part.net.panels[i].id, static_cast<int>(edge),
                       static_cast<int>(outline.size())};
      }
    }
  }
  return found;
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
      return placeAtTick(label.mm, label.turned, 1e-3, built, piece);
  return {};
}

}  // namespace creasewright
