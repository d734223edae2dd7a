#include "geometry/region.h"

#include <cmath>
#include <optional>
#include <utility>

#include <polyclipping/clipper.hpp>

#include "geometry/apart.h"
#include "geometry/grown.h"

namespace creasewright {
namespace {

namespace clip = ClipperLib;

constexpr double kUnitsPerMm = 1e6;
constexpr double kMitreLimit = 4;

/// Halves of whole nanometres are common and reach here with errors of the last bits; rounding to
/// nearest would tear two such corners apart.
clip::cInt toUnits(double mm) {
  constexpr double kOffTies = 0.637;
  return static_cast<clip::cInt>(std::floor(mm * kUnitsPerMm + kOffTies));
}

clip::Path toPath(const Polygon& polygon) {
  clip::Path path;
  path.reserve(polygon.size());
  for (const Point& p : polygon) path.emplace_back(toUnits(p.x), toUnits(p.y));
  return path;
}

/// Whether b lies between a and c, but for the rounding of the three.
bool straightOn(const clip::IntPoint& a, const clip::IntPoint& b, const clip::IntPoint& c) {
  constexpr long double kRounding = 2;
  const auto wide = [](clip::cInt value) { return static_cast<long double>(value); };
  const long double alongX = wide(c.X - a.X);
  const long double alongY = wide(c.Y - a.Y);
  const long double off = alongX * wide(b.Y - a.Y) - alongY * wide(b.X - a.X);
  return std::abs(off) <= kRounding * std::hypot(alongX, alongY) &&
         wide(b.X - a.X) * wide(c.X - b.X) + wide(b.Y - a.Y) * wide(c.Y - b.Y) >= 0;
}

/// Drops the corners that a union leaves on straight edges. Each is judged between corners that
/// stay: of two that lie a rounding apart one must remain.
Polygon toPolygon(const clip::Path& path) {
  clip::Path kept;
  const std::size_t n = path.size();
  for (std::size_t i = 0; i < n; ++i) {
    const auto& before = kept.empty() ? path[n - 1] : kept.back();
    const auto& after = i + 1 < n || kept.empty() ? path[(i + 1) % n] : kept.front();
    if (!straightOn(before, path[i], after)) kept.push_back(path[i]);
  }
  Polygon polygon;
  for (const auto& p : kept)
    polygon.push_back(
        {static_cast<double>(p.X) / kUnitsPerMm, static_cast<double>(p.Y) / kUnitsPerMm});
  return polygon;
}

clip::Paths toPaths(const Region& region) {
  clip::Paths paths;
  for (const Area& area : region) {
    paths.push_back(toPath(area.outer));
    for (const Polygon& hole : area.holes) paths.push_back(toPath(hole));
  }
  return paths;
}

void collect(const clip::PolyNode& node, Region& into) {
  for (const clip::PolyNode* outer : node.Childs) {
    Area area{toPolygon(outer->Contour), {}};
    for (const clip::PolyNode* hole : outer->Childs) {
      area.holes.push_back(toPolygon(hole->Contour));
      collect(*hole, into);
    }
    into.push_back(std::move(area));
  }
}

/// The areas of rings none of which is a hole; nothing when one is.
std::optional<Region> withoutHoles(const clip::Paths& rings) {
  Region result;
  for (const clip::Path& ring : rings) {
    if (ring.size() < 3) continue;
    if (!clip::Orientation(ring)) return std::nullopt;
    result.push_back({toPolygon(ring), {}});
  }
  return result;
}

/// Which ring lies in which is only worked out where there are holes: it takes long.
Region run(clip::ClipType type, const clip::Paths& subject, const clip::Paths& other) {
  clip::Clipper clipper;
  clipper.StrictlySimple(true);
  clipper.AddPaths(subject, clip::ptSubject, true);
  clipper.AddPaths(other, clip::ptClip, true);
  clip::Paths rings;
  clipper.Execute(type, rings, clip::pftNonZero, clip::pftNonZero);
  if (std::optional<Region> plain = withoutHoles(rings)) return std::move(*plain);
  clip::PolyTree tree;
  clipper.Execute(type, tree, clip::pftNonZero, clip::pftNonZero);
  Region result;
  collect(tree, result);
  return result;
}

Region grown(const Region& region, clip::ClipperOffset&& clipper, clip::JoinType corners,
             double distance) {
  clipper.AddPaths(toPaths(region), corners, clip::etClosedPolygon);
  clip::PolyTree tree;
  clipper.Execute(tree, distance * kUnitsPerMm);
  Region result;
  collect(tree, result);
  return result;
}

/// Whether openings are holes of an area for everyone to see: far from its edge and each other by
/// more than any rounding.
bool arePlainHoles(const Region& whole, const std::vector<Polygon>& openings) {
  constexpr double kApart = 1e-3;  // mm
  if (whole.size() != 1 || !whole.front().holes.empty()) return false;
  for (std::size_t i = 0; i < openings.size(); ++i) {
    if (!plainlyInside(openings[i], whole.front().outer, kApart) || !isSimple(openings[i]))
      return false;
    for (std::size_t k = 0; k < i; ++k)
      if (!plainlyOutside(openings[i], openings[k], kApart)) return false;
  }
  return true;
}

/// Rounded as every other ring.
Polygon asHole(const Polygon& opening) {
  clip::Path path = toPath(opening);
  if (clip::Orientation(path)) clip::ReversePath(path);
  return toPolygon(path);
}

}  // namespace

Region unite(const std::vector<Polygon>& polygons) {
  clip::Paths paths;
  for (const Polygon& polygon : polygons) {
    paths.push_back(toPath(polygon));
    if (!clip::Orientation(paths.back())) clip::ReversePath(paths.back());
  }
  return run(clip::ctUnion, paths, {});
}

Region intersect(const Region& a, const Region& b) {
  return run(clip::ctIntersection, toPaths(a), toPaths(b));
}

Region subtract(const Region& a, const Region& b) {
  return run(clip::ctDifference, toPaths(a), toPaths(b));
}

Region cutOut(const Region& whole, const std::vector<Polygon>& openings) {
  if (openings.empty()) return whole;
  if (!arePlainHoles(whole, openings)) return subtract(whole, unite(openings));
  Region cut = whole;
  for (const Polygon& opening : openings) cut.front().holes.push_back(asHole(opening));
  return cut;
}

Region offset(const Region& region, double distance) {
  return grown(region, clip::ClipperOffset(kMitreLimit), clip::jtMiter, distance);
}

Region grownRound(const Region& region, double distance) {
  constexpr double kArcs = 0.01;  // mm
  return grown(region, clip::ClipperOffset(kMitreLimit, kArcs * kUnitsPerMm), clip::jtRound,
               distance);
}

Region region(const Polygon& polygon) { return unite({polygon}); }

double area(const Region& region) {
  double sum = 0;
  for (const Area& part : region) {
    sum += std::abs(signedArea(part.outer));
    for (const Polygon& hole : part.holes) sum -= std::abs(signedArea(hole));
  }
  return sum;
}

}  // namespace creasewright
