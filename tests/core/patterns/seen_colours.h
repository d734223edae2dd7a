#pragma once

#include <random>
#include <vector>

#include "patterns/pattern.h"
#include "patterns/pattern_on.h"

namespace creasewright {

/// Crossings of a ray to the right, counted one by one: the even-odd rule.
inline bool evenOdd(Point p, const Polygon& ring) {
  bool inside = false;
  for (std::size_t i = 0, k = ring.size() - 1; i < ring.size(); k = i++) {
    const Point a = ring[i];
    const Point b = ring[k];
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y))
      inside = !inside;
  }
  return inside;
}

/// The colours of a printed paper at points, found from its shapes alone.
class SeenColours {
 public:
  explicit SeenColours(std::vector<Inked> inks) : inks_(std::move(inks)) {
    for (const Inked& ink : inks_) {
      boxes_.emplace_back();
      for (const Area& area : ink.shape) boxes_.back().push_back(bounds(area.outer));
    }
  }

  /// The layer that is seen, -1 for none.
  [[nodiscard]] int layerAt(Point p) const {
    for (std::size_t i = inks_.size(); i-- > 0;) {
      bool inside = false;
      for (std::size_t k = 0; k < boxes_[i].size(); ++k) {
        const Bounds& box = boxes_[i][k];
        if (p.x < box.low.x || p.x > box.high.x || p.y < box.low.y || p.y > box.high.y) continue;
        const Area& area = inks_[i].shape[k];
        inside ^= evenOdd(p, area.outer);
        for (const Polygon& hole : area.holes) inside ^= evenOdd(p, hole);
      }
      if (inside) return static_cast<int>(i);
    }
    return -1;
  }
  [[nodiscard]] Colour at(Point p) const {
    const int layer = layerAt(p);
    return layer < 0 ? Colour{1, 2, 3} : inks_[static_cast<std::size_t>(layer)].colour;
  }

 private:
  std::vector<Inked> inks_;
  std::vector<std::vector<Bounds>> boxes_;
};

/// Points spread by chance over a square from -half to half, the same in every run.
inline std::vector<Point> somePoints(int count, double half, unsigned seed = 3) {
  std::mt19937 chance(seed);
  const auto next = [&] { return (chance() / 4294967296.0 * 2 - 1) * half; };
  std::vector<Point> points;
  for (int i = 0; i < count; ++i) {
    const double x = next();
    points.push_back({x, next()});
  }
  return points;
}

inline Region square(double half) {
  return {{{{-half, -half}, {half, -half}, {half, half}, {-half, half}}, {}}};
}

inline PaperPattern paperOf(const PatternKind& pattern, Length scale, int turn = 0) {
  PaperPattern paper = usualPaper(pattern);
  paper.scale = scale;
  paper.turn = turn;
  return paper;
}

}  // namespace creasewright
