#include "extras/outline_round.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace creasewright {
namespace {

using Ring = std::vector<Point3>;

/// The part of a ring up to a plane across `along`.
Ring below(const Ring& ring, Point3 along, double most) {
  Ring kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point3 a = ring[i];
    const Point3 b = ring[(i + 1) % ring.size()];
    const double at = dot(a, along) - most;
    const double next = dot(b, along) - most;
    if (at <= 0) kept.push_back(a);
    if ((at <= 0) != (next <= 0)) kept.push_back(a + (b - a) * (at / (at - next)));
  }
  return kept;
}

/// Where a strip runs round a box.
struct RoundStrip {
  const OutsideBox& box;
  std::size_t axis;
  double half;

  [[nodiscard]] Point flat(Point3 p) const {
    const Point3 from = p - box.centre;
    return {dot(from, box.axes.at((axis + 1) % 3)), dot(from, box.axes.at((axis + 2) % 3))};
  }
  void take(const Ring& ring, std::vector<Point>& points) const {
    const Point3 along = box.axes.at(axis);
    const double middle = dot(box.centre, along);
    for (const Point3& p : below(below(ring, along, middle + half), along * -1, half - middle))
      points.push_back(flat(p));
  }
};

/// The middles of the card of all pieces that stand together.
std::vector<Point> cardIn(const Host& host, const RoundStrip& strip) {
  std::vector<Point> points;
  for (const HostPiece& piece : host.pieces) {
    const bool first = &piece == host.pieces.data();
    if (!first && (!piece.place || !piece.part->cavity || piece.part->net.creases.empty()))
      continue;
    const Transform standing = first ? Transform() : *piece.place;
    for (std::size_t i = 0; i < piece.part->net.panels.size(); ++i) {
      const Transform place = standing.after((*piece.folded)[i]);
      Ring ring;
      for (const Point& corner : piece.part->net.panels[i].outline)
        ring.push_back(place.apply(corner));
      strip.take(ring, points);
    }
  }
  return points;
}

void takeWraps(const Host& host, const RoundStrip& strip, std::vector<Point>& points) {
  for (const WrapBody& body : host.under) {
    const Point half =
        Point{body.sizes.at((strip.axis + 1) % 3), body.sizes.at((strip.axis + 2) % 3)} / 2;
    for (const double x : {half.x, -half.x})
      for (const double y : {half.y, -half.y}) points.push_back({x, y});
  }
}

/// What stands out: its corners on the face and so far over it.
void takeRaised(const Host& host, const RoundStrip& strip, double onFace,
                std::vector<Point>& points) {
  for (const Raised* raised : raisedUnder(host, strip.box, strip.axis, 2 * strip.half)) {
    Ring ring;
    for (const Point3& corner : raised->corners)
      ring.push_back(corner + raised->out * (onFace + raised->height));
    strip.take(ring, points);
  }
}

}  // namespace

Polygon outlineRound(const Host& host, const OutsideBox& box, std::size_t axis, double width,
                     std::span<const std::vector<Point3>> more) {
  const RoundStrip strip{box, axis, width / 2};
  const double onFace = host.bench.caliper.mm() / 2 + host.onFaces.mm();
  std::vector<Point> points;
  for (const Area& part : offset(region(convexHull(cardIn(host, strip))), onFace))
    std::ranges::copy(part.outer, std::back_inserter(points));
  takeWraps(host, strip, points);
  takeRaised(host, strip, onFace, points);
  for (const Ring& ring : more) strip.take(ring, points);
  return convexHull(std::move(points));
}

}  // namespace creasewright
