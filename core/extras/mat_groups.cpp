#include "extras/mat_groups.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "extras/flat_piece.h"

namespace creasewright {
namespace {

constexpr double kSame = 1e-4;      // mm; mats that differ less are one size
constexpr double kSmallestMat = 6;  // mm; narrower ones are not worth cutting

Polygon centredRectangle(Point middle, double width, double height) {
  const Point half{width / 2, height / 2};
  return {middle - half, middle + Point{half.x, -half.y}, middle + half,
          middle + Point{-half.x, half.y}};
}

/// Whether a straight edge of the mat lies along each of the four sides of its bounds.
bool fillsItsBounds(const Polygon& outline) {
  constexpr double kLong = 0.3;  // of the side
  const Bounds box = bounds(outline);
  const auto along = [&](auto across, double at) {
    double length = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Point a = outline[i];
      const Point b = outline[(i + 1) % outline.size()];
      if (std::abs(across(a) - at) < kSame && std::abs(across(b) - at) < kSame)
        length += distance(a, b);
    }
    return length;
  };
  const auto x = [](Point p) { return p.x; };
  const auto y = [](Point p) { return p.y; };
  return std::min(along(x, box.low.x), along(x, box.high.x)) > kLong * box.height() &&
         std::min(along(y, box.low.y), along(y, box.high.y)) > kLong * box.width();
}

/// The mat with width and height rounded down to the grid: trimmed alike on both sides, or, where
/// tips or curves reach its bounds, drawn smaller. As it was where neither stays inside it.
Area onGrid(const Area& mat, ToolGrid grid) {
  const Bounds box = bounds(mat.outer);
  const double width = onGridBelow(box.width() + kSame, grid).mm();
  const double height = onGridBelow(box.height() + kSame, grid).mm();
  if (std::min(width, height) < kSmallestMat) return mat;
  const Point middle = (box.low + box.high) / 2;
  if (fillsItsBounds(mat.outer)) {
    const Region cut = intersect({mat}, region(centredRectangle(middle, width, height)));
    return cut.size() == 1 ? cut.front() : mat;
  }
  if (!mat.holes.empty()) return mat;
  Area smaller = mat;
  for (Point& p : smaller.outer)
    p = middle +
        Point{(p.x - middle.x) * width / box.width(), (p.y - middle.y) * height / box.height()};
  constexpr double kNothing = 1e-6;  // mm2
  return area(subtract({smaller}, offset({mat}, kSame))) < kNothing ? smaller : mat;
}

/// As it is seen from behind.
Polygon mirrored(Polygon ring) {
  for (Point& p : ring) p.x = -p.x;
  std::ranges::reverse(ring);
  return ring;
}

/// The largest part of a room, `inset` inside every edge and opening, upright about (0, 0) as it is
/// seen, and on the grid.
std::optional<Area> matFor(const MatRoom& room, FaceSide side, double inset, ToolGrid grid) {
  const Region inner = offset(room.card, -inset);
  if (inner.empty()) return std::nullopt;
  const Area& largest = *std::ranges::max_element(
      inner, {}, [](const Area& a) { return std::abs(signedArea(a.outer)); });
  const auto seen = [&](const Polygon& ring) {
    Polygon laid = laidUpright(room.face, ring);
    return side == FaceSide::Inside ? mirrored(std::move(laid)) : laid;
  };
  Area mat{seen(largest.outer), {}};
  for (const Polygon& hole : largest.holes) mat.holes.push_back(seen(hole));
  const Bounds box = bounds(mat.outer);
  if (box.width() < kSmallestMat || box.height() < kSmallestMat) return std::nullopt;
  return onGrid(mat, grid);
}

bool sameRing(const Polygon& a, const Polygon& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t shift = 0; shift < a.size(); ++shift) {
    bool same = true;
    for (std::size_t i = 0; i < a.size() && same; ++i)
      same = distance(a[i], b[(i + shift) % b.size()]) < kSame;
    if (same) return true;
  }
  return false;
}

bool sameArea(const Area& a, const Area& b) {
  return sameRing(a.outer, b.outer) && a.holes.size() == b.holes.size() &&
         std::ranges::equal(a.holes, b.holes, sameRing);
}

Area fromCorner(Area mat, Point corner) {
  for (Point& p : mat.outer) p = p - corner;
  for (Polygon& hole : mat.holes)
    for (Point& p : hole) p = p - corner;
  return mat;
}

}  // namespace

std::vector<MatGroup> matGroups(const std::vector<MatRoom>& rooms, FaceSide side, double inset,
                                ToolGrid grid) {
  std::vector<MatGroup> groups;
  for (const MatRoom& room : rooms) {
    std::optional<Area> mat = matFor(room, side, inset, grid);
    if (!mat) continue;
    const Point corner = bounds(mat->outer).low;
    Area moved = fromCorner(std::move(*mat), corner);
    const auto known =
        std::ranges::find_if(groups, [&](const MatGroup& g) { return sameArea(g.area, moved); });
    if (known == groups.end())
      groups.push_back({std::move(moved), {{room.face, corner}}});
    else
      known->places.push_back({room.face, corner});
  }
  return groups;
}

ExtraParts matParts(const std::vector<MatGroup>& groups, std::string_view name, FaceSide side,
                    double lift) {
  const bool inside = side == FaceSide::Inside;
  ExtraParts parts;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const MatGroup& group = groups[i];
    std::string own(name);
    if (groups.size() > 1) own += "-" + std::to_string(i + 1);
    ExtraPiece piece{flatPiece(own, group.area), inside ? Placing::OnInside : Placing::OnFace};
    piece.part.count = static_cast<int>(group.places.size());
    for (const MatPlace& place : group.places)
      piece.faces.push_back((inside ? placeInside : placeOn)(place.face, place.corner * -1, lift));
    parts.pieces.push_back(std::move(piece));
  }
  return parts;
}

}  // namespace creasewright
