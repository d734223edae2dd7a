#include "folding/motion/separation.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace creasewright {
namespace {

/// Whether all corners of the moving part stay beyond height `from` along a normal that is fixed to
/// the other part.
bool staysBeyond(const PlacedShape& moving, Point3 normal, double from, const Twist& twist,
                 double stray) {
  const Point3 lever = cross(normal, twist.turn);  // normal . (turn x p) = (normal x turn) . p
  const double along = dot(normal, twist.shift);
  return std::ranges::all_of(moving.corners, [&](const Point3& corner) {
    return dot(normal, corner) - std::abs(dot(lever, corner) + along) - stray >= from;
  });
}

Point3 support(const PlacedShape& shape, Point3 direction) {
  return *std::ranges::max_element(
      shape.corners, {}, [direction](const Point3& corner) { return dot(direction, corner); });
}

/// One pair during one step, and the planes to try.
class Trial {
 public:
  Trial(const PlacedShape& a, const PlacedShape& b, const RelativeMotion& motion, double tolerance)
      : a_(a), b_(b), motion_(motion), tolerance_(tolerance) {}

  /// Candidates by number: edges of a, edges of b, both sides of a's plane, both of b's, nearest
  /// points.
  [[nodiscard]] int count() const { return edgesA() + edgesB() + 5; }

  /// The edge of a that the middle of b lies farthest beyond.
  [[nodiscard]] int likeliest() const {
    const Point3 there = a_.frame.inverse().apply(b_.frame.apply(b_.shape->centre));
    const Polygon& corners = a_.shape->corners;
    int found = 0;
    double farthest = -std::numeric_limits<double>::infinity();
    for (int i = 0; i < edgesA(); ++i) {
      const Point from = corners[static_cast<std::size_t>(i)];
      const Point along = corners[static_cast<std::size_t>(i + 1) % corners.size()] - from;
      const double beyond = cross(Point{there.x, there.y} - from, along);
      if (beyond <= 0) continue;
      const double square = beyond * beyond / dot(along, along);
      if (square > farthest) {
        farthest = square;
        found = i;
      }
    }
    return found;
  }

  [[nodiscard]] std::optional<Point3> tryCandidate(int candidate) const {
    if (candidate < edgesA()) return edgePlane(a_, candidate, true);
    candidate -= edgesA();
    if (candidate < edgesB()) return edgePlane(b_, candidate, false);
    candidate -= edgesB();
    if (candidate == 4) return nearestPlane();
    const double sign = candidate % 2 == 0 ? 1 : -1;
    return facePlane(candidate < 2, sign);
  }

 private:
  [[nodiscard]] std::optional<Point3> facePlane(bool ofA, double sign) const {
    const PlacedShape& fixed = ofA ? a_ : b_;
    const Point3 normal = fixed.normal() * sign;
    return check(ofA, normal, dot(normal, fixed.corners.front()));
  }

  /// A plane square to the line between the nearest points of the two (after Gilbert).
  [[nodiscard]] std::optional<Point3> nearestPlane() const {
    constexpr int kRounds = 10;
    Point3 gap = b_.corners.front() - a_.corners.front();
    for (int round = 0; round < kRounds; ++round) {
      const double length = norm(gap);
      if (length < 1e-9) return std::nullopt;
      const Point3 normal = gap / length;
      if (round > 2)
        if (const auto found = check(true, normal, reach(a_.corners, normal))) return found;
      const Point3 nearer = support(b_, normal * -1) - support(a_, normal);
      const Point3 way = nearer - gap;
      const double square = dot(way, way);
      if (square < 1e-18) return std::nullopt;
      gap = gap + way * std::clamp(-dot(gap, way) / square, 0.0, 1.0);
    }
    return std::nullopt;
  }

  [[nodiscard]] int edgesA() const { return static_cast<int>(a_.corners.size()); }
  [[nodiscard]] int edgesB() const { return static_cast<int>(b_.corners.size()); }

  /// `normal` points away from the part it is fixed to, whose reach along it is `from`.
  [[nodiscard]] std::optional<Point3> check(bool fixedToA, Point3 normal, double from) const {
    const PlacedShape& moving = fixedToA ? b_ : a_;
    const double stray = fixedToA ? motion_.strayB : motion_.strayA;
    if (!staysBeyond(moving, normal, from - tolerance_, motion_.twist, stray)) return std::nullopt;
    return fixedToA ? normal : normal * -1;
  }

  /// The plane through an edge and square to its part.
  [[nodiscard]] std::optional<Point3> edgePlane(const PlacedShape& fixed, int edge,
                                                bool ofA) const {
    const auto i = static_cast<std::size_t>(edge);
    const Point3& from = fixed.corners[i];
    const Point3& to = fixed.corners[(i + 1) % fixed.corners.size()];
    const Point3 outward = cross(to - from, fixed.normal());
    const double length = norm(outward);
    if (length < 1e-9) return std::nullopt;
    const Point3 normal = outward / length;
    return check(ofA, normal, dot(normal, from));
  }

  const PlacedShape& a_;
  const PlacedShape& b_;
  const RelativeMotion& motion_;
  double tolerance_;
};

/// Tells from two points of the parts, nearer to one another in each round, that no plane fixed to
/// either part can keep the two apart.
class Nearness {
 public:
  Nearness(const PlacedShape& a, const PlacedShape& b, const RelativeMotion& motion,
           double tolerance)
      : a_(a),
        b_(b),
        motion_(motion),
        tolerance_(tolerance),
        ofA_(a.frame.apply(a.shape->centre)),
        ofB_(b.frame.apply(b.shape->centre)) {}

  [[nodiscard]] bool rulesOut() {
    constexpr int kRounds = 4;
    for (int round = 0; round < kRounds; ++round) {
      if (ruledOut(ofB_, motion_.strayB) && ruledOut(ofA_, motion_.strayA)) return true;
      if (!comeNearer()) return false;
    }
    return false;
  }

 private:
  /// The plane would have to keep the gap longer than what the step strays, whatever the moves of
  /// the point that it is not fixed to make of it.
  [[nodiscard]] bool ruledOut(Point3 moving, double stray) const {
    const double least = stray - tolerance_;
    if (least <= 0) return false;
    const Point3 gap = ofB_ - ofA_;
    const Point3 moves = motion_.twist.at(moving);
    const double square = dot(moves, moves);
    const double part = square > 0 ? std::clamp(-dot(gap, moves) / square, -1.0, 1.0) : 0;
    const Point3 nearest = gap + moves * part;
    return dot(nearest, nearest) < least * least;
  }

  /// One step of Frank and Wolfe's method; false when the two are as near as they get.
  bool comeNearer() {
    const Point3 gap = ofB_ - ofA_;
    const Point3 towardsA = support(b_, gap * -1);
    const Point3 towardsB = support(a_, gap);
    const Point3 way = towardsA - towardsB - gap;
    const double square = dot(way, way);
    const double part = square > 0 ? std::clamp(-dot(gap, way) / square, 0.0, 1.0) : 0;
    ofA_ = ofA_ + (towardsB - ofA_) * part;
    ofB_ = ofB_ + (towardsA - ofB_) * part;
    return part > 0;
  }

  const PlacedShape& a_;
  const PlacedShape& b_;
  const RelativeMotion& motion_;
  double tolerance_;
  Point3 ofA_;  // the middle of the box about a convex part lies in it
  Point3 ofB_;
};

}  // namespace

std::optional<Point3> separate(const PlacedShape& a, const PlacedShape& b,
                               const RelativeMotion& motion, double tolerance,
                               SeparationHint& hint) {
  const Trial trial(a, b, motion, tolerance);
  if (hint.candidate < 0) hint.candidate = trial.likeliest();
  if (const auto normal = trial.tryCandidate(hint.candidate)) return normal;
  if (Nearness(a, b, motion, tolerance).rulesOut()) return std::nullopt;
  for (int candidate = 0; candidate < trial.count(); ++candidate) {
    if (const auto normal = trial.tryCandidate(candidate)) {
      hint.candidate = candidate;
      return normal;
    }
  }
  return std::nullopt;
}

}  // namespace creasewright
