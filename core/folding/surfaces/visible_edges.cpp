#include "folding/surfaces/visible_edges.h"

#include <algorithm>
#include <cmath>

#include "folding/surfaces/intervals.h"

namespace creasewright {
namespace {

struct ScreenRing {
  Polygon corners;
  Bounds box;
};

/// A plate as the camera sees it.
struct Screen {
  std::vector<ScreenRing> rings;
  Bounds box;
  Point3 normal;  // towards the eye
  double offset = 0;
  double nearest = 0;
  Point3 middle;
  bool edgeOn = false;
};

Screen screenOf(const Plate& plate, const Camera& camera) {
  Screen screen;
  screen.normal = plate.frame.normal();
  const double facing = dot(screen.normal, camera.towardsEye);
  screen.edgeOn = std::abs(facing) < 1e-9;
  if (facing < 0) screen.normal = screen.normal * -1;
  screen.offset = dot(screen.normal, plate.frame.apply(Point{0, 0}));
  int corners = 0;
  for (const Area& area : plate.shape) {
    for (const Point& corner : area.outer) {
      const Point3 placed = plate.frame.apply(corner);
      include(screen.box, camera.project(placed), corners == 0);
      const double nearness = camera.nearness(placed);
      screen.nearest = corners == 0 ? nearness : std::max(screen.nearest, nearness);
      screen.middle = screen.middle + placed;
      ++corners;
    }
    const auto addRing = [&](const Polygon& ring) {
      ScreenRing& seen = screen.rings.emplace_back();
      seen.corners.reserve(ring.size());
      for (const Point& corner : ring) {
        seen.corners.push_back(camera.project(plate.frame.apply(corner)));
        include(seen.box, seen.corners.back(), seen.corners.size() == 1);
      }
    };
    addRing(area.outer);
    for (const Polygon& hole : area.holes) addRing(hole);
  }
  screen.middle = screen.middle / std::max(1, corners);
  return screen;
}

/// Whether one box comes within `margin` mm of another.
bool near(const Bounds& a, const Bounds& b, double margin) {
  return a.low.x - margin <= b.high.x && b.low.x <= a.high.x + margin &&
         a.low.y - margin <= b.high.y && b.low.y <= a.high.y + margin;
}

/// Inside by the even-odd rule; a point on the boundary counts as outside.
bool covers(const Screen& screen, Point p) {
  constexpr double kOn = 1e-6;  // mm
  bool inside = false;
  for (const ScreenRing& ring : screen.rings) {
    if (!near(ring.box, {p, p}, 2 * kOn)) continue;
    for (std::size_t i = 0; i < ring.corners.size(); ++i) {
      const Point a = ring.corners[i];
      const Point b = ring.corners[i + 1 < ring.corners.size() ? i + 1 : 0];
      if (distanceToSegment(p, {a, b}) < kOn) return false;
      if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
        inside = !inside;
    }
  }
  return inside;
}

/// Parameters at which the seen segment passes an edge of the screen, in order, within `range`.
std::vector<double> crossings(const Screen& screen, Point a, Point b, Interval range) {
  std::vector<double> found{range.from, range.to};
  const Point along = b - a;
  const Bounds seen{{std::min(a.x, b.x), std::min(a.y, b.y)},
                    {std::max(a.x, b.x), std::max(a.y, b.y)}};
  for (const ScreenRing& ring : screen.rings) {
    if (!near(ring.box, seen, 1e-3)) continue;
    for (std::size_t i = 0; i < ring.corners.size(); ++i) {
      const Point c = ring.corners[i];
      const Point edge = ring.corners[i + 1 < ring.corners.size() ? i + 1 : 0] - c;
      const double turn = cross(along, edge);
      if (std::abs(turn) < 1e-12) continue;
      const double t = cross(c - a, edge) / turn;
      const double u = cross(c - a, along) / turn;
      if (t > range.from && t < range.to && u >= -1e-9 && u <= 1 + 1e-9) found.push_back(t);
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

class Clipper {
 public:
  Clipper(const std::vector<Plate>& plates, const Camera& camera, double tolerance)
      : sheets_(plates), camera_(camera), tolerance_(tolerance) {
    for (const Plate& plate : plates) screens_.push_back(screenOf(plate, camera));
  }

  void clip(const SpaceEdge& edge, std::vector<VisibleEdge>& out) {
    const Point a = camera_.project(edge.a);
    const Point b = camera_.project(edge.b);
    const double seenLength = distance(a, b);
    if (seenLength < 1e-3) return;
    std::vector<Interval> hidden;
    // The edges of one opening follow one another, and what hides one hides the next.
    if (hider_ < sheets_.size() && hidesAll(edge, a, b, hider_, hidden)) return;
    for (std::size_t i = 0; i < sheets_.size(); ++i) {
      if (i == hider_) continue;
      if (!hidesAll(edge, a, b, i, hidden)) continue;
      hider_ = i;
      return;
    }
    for (const Interval& part : without(std::move(hidden), 1e-3 / seenLength))
      out.push_back({{a + (b - a) * part.from, a + (b - a) * part.to}, edge.crease});
  }

 private:
  /// The same as hide(); true where it is all of the edge in one piece.
  bool hidesAll(const SpaceEdge& edge, Point a, Point b, std::size_t index,
                std::vector<Interval>& hidden) const {
    const std::size_t before = hidden.size();
    hide(edge, a, b, index, hidden);
    return hidden.size() == before + 1 && hidden.back().from <= 0 && hidden.back().to >= 1;
  }

  /// Adds the parts of the edge that plate `index` hides.
  void hide(const SpaceEdge& edge, Point a, Point b, std::size_t index,
            std::vector<Interval>& hidden) const {
    const Screen& screen = screens_[index];
    const int own = static_cast<int>(index);
    if (screen.edgeOn || edge.plates[0] == own || edge.plates[1] == own) return;
    if (std::max(a.x, b.x) <= screen.box.low.x || std::min(a.x, b.x) >= screen.box.high.x ||
        std::max(a.y, b.y) <= screen.box.low.y || std::min(a.y, b.y) >= screen.box.high.y)
      return;
    if (std::min(camera_.nearness(edge.a), camera_.nearness(edge.b)) > screen.nearest + tolerance_)
      return;
    Interval behind;
    if (!isBehind(edge, index, behind)) return;
    const std::vector<double> stops = crossings(screen, a, b, behind);
    for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
      const double middle = (stops[k] + stops[k + 1]) / 2;
      if (stops[k + 1] > stops[k] && covers(screen, a + (b - a) * middle))
        hidden.push_back({stops[k], stops[k + 1]});
    }
  }

  /// The part of the edge behind the plane of a plate; false when there is none.
  bool isBehind(const SpaceEdge& edge, std::size_t index, Interval& behind) const {
    const Screen& screen = screens_[index];
    const double from = dot(screen.normal, edge.a) - screen.offset;
    const double to = dot(screen.normal, edge.b) - screen.offset;
    if (std::max(std::abs(from), std::abs(to)) <= tolerance_) return isUnder(edge, index);
    if (from >= -tolerance_ && to >= -tolerance_) return false;
    if (from < -tolerance_ && to < -tolerance_) return true;
    const double t = (from + tolerance_) / (from - to);
    behind = from < to ? Interval{0, t} : Interval{t, 1};
    return true;
  }

  /// For an edge in the plane of a plate: whether all it belongs to lies behind that plate.
  [[nodiscard]] bool isUnder(const SpaceEdge& edge, std::size_t index) const {
    const Screen& screen = screens_[index];
    for (const int own : edge.plates) {
      if (own < 0) continue;
      const double height = dot(screen.normal, screens_[own].middle) - screen.offset;
      if (height > tolerance_) return false;
      if (height >= -tolerance_ && !liesOver(sheets_[index], sheets_[own], camera_.towardsEye))
        return false;
    }
    return true;
  }

  const std::vector<Plate>& sheets_;
  const Camera& camera_;
  double tolerance_;
  std::vector<Screen> screens_;
  std::size_t hider_ = static_cast<std::size_t>(-1);  ///< of the last edge that was hidden whole
};

}  // namespace

std::vector<VisibleEdge> visibleEdges(const std::vector<SpaceEdge>& edges,
                                      const std::vector<Plate>& plates, const Camera& camera,
                                      double tolerance) {
  std::vector<VisibleEdge> out;
  Clipper clipper(plates, camera, tolerance);
  for (const SpaceEdge& edge : edges) clipper.clip(edge, out);
  return out;
}

}  // namespace creasewright
