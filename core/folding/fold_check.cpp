#include "folding/fold_check.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

#include "geometry/region.h"

namespace creasewright {
namespace {

constexpr double kSlack = 0.05;  // mm, what rounding a style's lengths to the tool grid may leave

/// A flap in the frame of its target.
struct Landed {
  const Panel& flap;
  const Panel& target;
  const Mate& mate;
  Polygon part;                 // of the flap that meets the target, in the flap's frame
  std::vector<Point3> corners;  // of that part
  double caliper;

  /// Tilts and turns have no such excuse as the thickness of a layer; a tenth of a caliper is what
  /// the eye cannot see.
  [[nodiscard]] double tiltLimit() const { return kSlack + caliper / 10; }
  [[nodiscard]] Polygon shadow() const {
    Polygon flat;
    for (const Point3& corner : corners) flat.push_back({corner.x, corner.y});
    if (signedArea(flat) < 0) std::reverse(flat.begin(), flat.end());
    return flat;
  }
};

Problem problem(ProblemCode code, const Landed& landed, ProblemValue value) {
  return {code, landed.flap.id, {landed.target.id, std::move(value)}, Severity::Error};
}

void checkPlane(const Landed& landed, Problems& problems) {
  const auto byHeight = [](const Point3& a, const Point3& b) { return a.z < b.z; };
  const auto [low, high] =
      std::minmax_element(landed.corners.begin(), landed.corners.end(), byHeight);
  const double sign = landed.mate.face == Face::Inside ? 1 : -1;
  const double middle = (low->z + high->z) / 2;
  const double farthest = std::max(std::abs(low->z), std::abs(high->z));
  const bool offPlane = farthest > kSlack + landed.caliper;
  const bool tilted = high->z - low->z > landed.tiltLimit();
  const bool wrongFace = middle * sign < -std::max(landed.caliper / 10, 1e-6);
  if (offPlane || tilted || wrongFace)
    problems.push_back(problem(ProblemCode::MateOffPlane, landed, Length::mm(farthest)));
}

/// The target as far as it holds the flap: openings do not matter for adhesive round them, and what
/// is only tucked or laid may bridge a notch.
Region holdOf(const Landed& landed) {
  if (landed.mate.method == Method::Glue) return {{landed.target.outline, {}}};
  return {{convexHull(landed.target.outline), {}}};
}

void checkInside(const Landed& landed, Problems& problems) {
  const double whole = std::abs(signedArea(landed.part));
  const Polygon shadow = landed.shadow();
  const Polygon& target = landed.target.outline;
  // So little sticks out that its share, at most the slack along the whole rim, is none.
  if (liesWellInside(shadow, target, 1e-4 * whole / perimeter(target))) return;
  const Region outside = subtract({{shadow, {}}}, holdOf(landed));
  const double share = whole > 0 ? area(outside) / whole : 0;
  if (share <= 1e-3) return;
  const double strip = landed.caliper + kSlack;
  if (offset(outside, -strip / 2).empty()) return;
  problems.push_back(problem(ProblemCode::MateOutsideTarget, landed, share * 100));
}

/// Distance in mm of `crease` from lying along `edge`: infinite when it turns away from the edge or
/// lies beside it by more than half its length.
double distanceAlong(const Segment& crease, const Segment& edge, double tiltLimit) {
  constexpr double kNever = std::numeric_limits<double>::infinity();
  const double edgeLength = length(edge);
  if (edgeLength < 1e-6) return kNever;
  const Point along = unit(edge.b - edge.a);
  const double a = cross(along, crease.a - edge.a);
  const double b = cross(along, crease.b - edge.a);
  if (std::abs(a - b) > tiltLimit) return kNever;
  const double from = dot(along, crease.a - edge.a);
  const double to = dot(along, crease.b - edge.a);
  const double shared =
      std::min(std::max(from, to), edgeLength) - std::max(std::min(from, to), 0.0);
  if (shared < length(crease) / 2) return kNever;
  return std::max(std::abs(a), std::abs(b));
}

double distanceToRim(const Segment& crease, const Polygon& outline, double tiltLimit) {
  double nearest = std::numeric_limits<double>::infinity();
  for (const Polygon& ring : {outline, convexHull(outline)}) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Segment edge{ring[i], ring[(i + 1) % ring.size()]};
      nearest = std::min(nearest, distanceAlong(crease, edge, tiltLimit));
    }
  }
  return nearest;
}

double distanceToOutline(Point p, const Polygon& outline) {
  double nearest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < outline.size(); ++i)
    nearest =
        std::min(nearest, distanceToSegment(p, {outline[i], outline[(i + 1) % outline.size()]}));
  return nearest;
}

void checkCrease(const Landed& landed, const Segment& crease, Problems& problems) {
  const Polygon& outline = landed.target.outline;
  const double limit = kSlack + 2 * landed.caliper;
  double reported = 0;
  if (landed.mate.rim) {
    if (distanceToRim(crease, outline, landed.tiltLimit()) <= limit) return;
    for (const Point end : {crease.a, crease.b})
      reported = std::max(reported, distanceToOutline(end, outline));
  } else {
    for (const Point end : {crease.a, crease.b})
      if (locate(end, outline, limit) == Side::Outside)
        reported = std::max(reported, distanceToOutline(end, outline));
    if (reported <= limit) return;
  }
  problems.push_back(problem(ProblemCode::CreaseMissesRim, landed, Length::mm(reported)));
}

/// The flap's own crease in its frame, as far as it bounds the mate's patch.
std::optional<Segment> ownCrease(const Net& net, const Mate& mate) {
  const Crease* crease = net.creaseOf(mate.panel);
  if (crease == nullptr) return std::nullopt;
  const double whole = length(crease->onParent);
  if (mate.patch.empty()) return Segment{{0, 0}, {whole, 0}};
  double from = whole;
  double to = 0;
  for (const Point& corner : mate.patch) {
    if (std::abs(corner.y) > 1e-6) continue;
    from = std::min(from, corner.x);
    to = std::max(to, corner.x);
  }
  if (to - from < 1e-6) return std::nullopt;
  return Segment{{from, 0}, {to, 0}};
}

}  // namespace

Problems checkMates(const Net& net, const Pose& folded, double caliper) {
  Problems problems;
  const int count = static_cast<int>(std::min(net.panels.size(), folded.size()));
  const auto known = [count](int panel) { return panel >= 0 && panel < count; };
  for (const Mate& mate : net.mates) {
    if (!known(mate.panel) || !known(mate.onto)) continue;  // findProblems names these
    const Transform seen = folded[mate.onto].inverse().after(folded[mate.panel]);
    const Panel& flap = net.panels[mate.panel];
    const Polygon& part = mate.patch.empty() ? flap.outline : mate.patch;
    Landed landed{flap, net.panels[mate.onto], mate, part, {}, caliper};
    for (const Point& corner : part) landed.corners.push_back(seen.apply(corner));
    if (landed.corners.empty()) continue;
    checkPlane(landed, problems);
    checkInside(landed, problems);
    if (const std::optional<Segment> own = ownCrease(net, mate)) {
      const Point3 a = seen.apply(own->a);
      const Point3 b = seen.apply(own->b);
      checkCrease(landed, {{a.x, a.y}, {b.x, b.y}}, problems);
    }
  }
  return problems;
}

}  // namespace creasewright
