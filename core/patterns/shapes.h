#pragma once

#include <cstdint>
#include <vector>

#include "geometry/polygon.h"

namespace creasewright {

// Shapes of patterns, in widths of the repeat, counter-clockwise.

/// Motifs that meet the next repeat's reach a little into it, so that no gap is left between them.
inline constexpr double kOverlap = 1e-3;

Polygon rectangle(double left, double bottom, double right, double top);
Polygon disc(Point centre, double radius, int corners = 28);
/// A straight bar with round or square ends.
Polygon bar(Point from, Point to, double width, bool round = false);
/// A run of points as wide as `width`, with square ends.
Polygon stroke(const Polyline& run, double width);
/// Points of a curve from `from` to `to` that is drawn towards `pull` (a quadratic Bezier curve).
Polyline curve(Point from, Point pull, Point to, int steps = 10);
/// A leaf from its stalk to its tip: both halves, or the left or right one. Each half bulges by
/// `bulge` times the length.
enum class LeafPart { Whole, Left, Right };
Polygon leaf(Point stalk, Point tip, double bulge, LeafPart part = LeafPart::Whole);
/// `tips` tips as far as `outer`, dents as far as `inner`; the first tip straight up.
Polygon star(int tips, double outer, double inner);

/// Turned about (0, 0) against the clock, made larger, then moved.
Polygon laid(const Polygon& shape, Point at, double degrees = 0, double size = 1);
Polygon mirrored(const Polygon& shape);  ///< left and right

/// Shapes that overlap as those of their union; it must have no holes.
std::vector<Polygon> joinedShapes(const std::vector<Polygon>& shapes);
/// The parts of `shape` outside all of `others`.
std::vector<Polygon> outside(const Polygon& shape, const std::vector<Polygon>& others);

/// Numbers that look random and are the same on every machine.
class Chance {
 public:
  explicit Chance(std::uint64_t seed) : state_(seed) {}
  double between(double low, double high);

 private:
  std::uint64_t state_;
};

/// A place of something strewn.
struct Strewn {
  Point at;
  double reach = 0;
};

/// Strews things that reach so far over a repeat of 1 by `height`, none nearer to another than
/// `gap`, over the edges too: large ones first, each where chance finds room; those that find none
/// are left out. `taken` lie there already.
std::vector<Strewn> strewn(const std::vector<double>& reaches, double gap, double height,
                           Chance& chance, std::vector<Strewn> taken = {});

}  // namespace creasewright
