#include "patterns/pattern_on.h"

#include <algorithm>
#include <cmath>

#include "patterns/pattern.h"
#include "units/angle.h"

namespace creasewright {
namespace {

Bounds include(Bounds a, const Bounds& b) {
  a.low = {std::min(a.low.x, b.low.x), std::min(a.low.y, b.low.y)};
  a.high = {std::max(a.high.x, b.high.x), std::max(a.high.y, b.high.y)};
  return a;
}

Bounds boundsOf(const Region& region) {
  Bounds all = bounds(region.front().outer);
  for (const Area& area : region) all = include(all, bounds(area.outer));
  return all;
}

Polygon corners(const Bounds& box) {
  return {box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}};
}

Polygon mapped(const Polygon& shape, const PlaneMap& map) {
  Polygon out;
  out.reserve(shape.size());
  for (const Point& p : shape) out.push_back(map.apply(p));
  if (map.factor() < 0) std::reverse(out.begin(), out.end());
  return out;
}

bool apart(const Bounds& a, const Bounds& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y;
}

bool isConvex(const Polygon& ring) {
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = ring[i];
    const Point b = ring[(i + 1) % ring.size()];
    const Point c = ring[(i + 2) % ring.size()];
    if (cross(b - a, c - b) < 0) return false;
  }
  return true;
}

/// Units of the repeat's width to the plane of the outline.
PlaneMap repeatMap(const PaperPattern& pattern, const PlaneMap& paper) {
  const double turn = Angle::degrees(pattern.turn).radians();
  const double scale = pattern.scale.mm();
  const Point along = Point{std::cos(turn), std::sin(turn)} * scale;
  return paper.after({{}, along, turnLeft(along)});
}

/// Lays a layer's shapes into the outline.
class Laying {
 public:
  Laying(const Region& outline, const PlaneMap& map, double height)
      : outline_(outline),
        map_(map),
        height_(height),
        around_(boundsOf(outline)),
        repeats_(bounds(mapped(corners(around_), map.inverse()))),
        convex_(outline.size() == 1 && outline.front().holes.empty() &&
                isConvex(outline.front().outer)) {}

  [[nodiscard]] double count() const { return repeats_.width() * repeats_.height() / height_; }

  [[nodiscard]] Region lay(const PatternLayer& layer) const {
    Region whole;
    Region across;
    for (const Polygon& shape : layer.shapes) {
      const Bounds box = bounds(shape);
      const auto first = [](double low, double high) { return std::ceil(low - high); };
      const auto last = [](double high, double low) { return std::floor(high - low); };
      for (double i = first(repeats_.low.x, box.high.x); i <= last(repeats_.high.x, box.low.x); ++i)
        for (double k = first(repeats_.low.y / height_, box.high.y / height_);
             k <= last(repeats_.high.y / height_, box.low.y / height_); ++k)
          add(shape, box, {i, k * height_}, layer.joined, whole, across);
    }
    if (!across.empty()) {
      Region cut = intersect(across, outline_);
      std::ranges::move(cut, std::back_inserter(whole));
    }
    return whole;
  }

 private:
  void add(const Polygon& shape, const Bounds& box, Point shift, bool joined, Region& whole,
           Region& across) const {
    const PlaneMap there{map_.apply(shift), map_.x, map_.y};
    const Polygon frame = mapped(corners(box), there);
    if (apart(bounds(frame), around_)) return;
    if (convex_ && partedByEdge(frame, outline_.front().outer, 0)) return;
    const bool inside = !joined && convex_ && liesWellInside(frame, outline_.front().outer, 0);
    (inside ? whole : across).push_back({mapped(shape, there), {}});
  }

  const Region& outline_;
  PlaneMap map_;
  double height_;
  Bounds around_;
  Bounds repeats_;
  bool convex_;
};

}  // namespace

std::vector<Inked> patternOn(const Region& outline, const PaperPattern& paper,
                             const PlaneMap& place) {
  const PatternKind* pattern = patternCalled(paper.id);
  if (pattern == nullptr || outline.empty()) return {};
  const std::vector<Colour> colours = coloursOf(paper);
  std::vector<Inked> inks{{colours.front(), outline}};
  const PlaneMap map = repeatMap(paper, place);
  const double least = 1e-3;  // of true size: a paper seen from its edge
  const double size = paper.scale.mm();
  if (!(std::abs(map.factor()) > least * size * size)) return inks;
  const Laying laying(outline, map, pattern->height);
  if (laying.count() > kMostRepeats) return {{meanColour(paper), outline}};
  for (const PatternLayer& layer : pattern->layers) {
    Region shape = laying.lay(layer);
    if (!shape.empty()) inks.push_back({inkOf(layer, colours), std::move(shape)});
  }
  return inks;
}

}  // namespace creasewright
