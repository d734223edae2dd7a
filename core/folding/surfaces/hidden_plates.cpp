#include "folding/surfaces/hidden_plates.h"

#include <algorithm>
#include <bitset>
#include <cmath>
#include <unordered_map>
#include <utility>

#include "geometry/segments.h"

namespace creasewright {
namespace {

struct Seen {
  std::vector<Point3> corners;  // of the outlines, in space
  Polygon outline;              // the same as the camera sees them
  Bounds box;
};

Seen seenBy(const Camera& camera, const Plate& plate) {
  Seen seen;
  for (const Area& area : plate.shape) {
    for (const Point& corner : area.outer) {
      seen.corners.push_back(plate.frame.apply(corner));
      seen.outline.push_back(camera.project(seen.corners.back()));
    }
  }
  if (!seen.outline.empty()) seen.box = bounds(seen.outline);
  return seen;
}

/// A panel without openings that shows a face to the camera.
struct Cover {
  Point3 normal;  // towards the eye
  double offset = 0;
  Polygon outline;  // counter-clockwise as seen
  Bounds box;
  double size = 0;  // mm2 of the outline
};

bool outlinesMeet(const Polygon& a, const Polygon& b) {
  for (std::size_t i = 0; i < a.size(); ++i)
    for (std::size_t j = 0; j < b.size(); ++j)
      if (meet({a[i], a[(i + 1) % a.size()]}, {b[j], b[(j + 1) % b.size()]})) return true;
  return false;
}

bool liesInside(const Polygon& part, const Area& whole) {
  return locate(part.front(), whole.outer) == Side::Inside && !outlinesMeet(part, whole.outer) &&
         std::ranges::none_of(
             whole.holes,
             [&](const Polygon& hole) {
               return locate(part.front(), hole) != Side::Outside ||
                      locate(hole.front(), part) != Side::Outside || outlinesMeet(part, hole);
             });
}

class Covers {
 public:
  Covers(const std::vector<Plate>& plates, const std::vector<Seen>& seen, const Camera& camera,
         double tolerance)
      : tolerance_(tolerance) {
    for (std::size_t i = 0; i < plates.size(); ++i) add(plates[i], seen[i], camera);
    std::ranges::stable_sort(covers_, std::greater(),
                             [](const Cover& cover) { return cover.size; });
  }

  [[nodiscard]] bool hide(const Seen& plate) {
    if (plate.corners.empty()) return false;
    const bool byOne = std::ranges::any_of(covers_, [&](const Cover& cover) {
      return liesIn(plate.box, cover.box) && isBehind(plate, cover) &&
             liesWellInside(plate.outline, cover.outline, 0);
    });
    return byOne || hideTogether(plate);
  }

 private:
  static constexpr std::size_t kLargest = 12;
  static constexpr std::size_t kShadows = 2;  // each takes as long as cutting up a few plates
  using Some = std::bitset<kLargest>;         // of the largest covers

  void add(const Plate& plate, const Seen& seen, const Camera& camera) {
    const Point3 normal = plate.frame.normal();
    const double facing = dot(normal, camera.towardsEye);
    const bool whole = plate.shape.size() == 1 && plate.shape.front().holes.empty();
    if (plate.owner < 0 || !whole || std::abs(facing) < 1e-6) return;
    Cover cover{facing < 0 ? normal * -1 : normal, 0, seen.outline, seen.box};
    cover.offset = dot(cover.normal, seen.corners.front());
    cover.size = signedArea(cover.outline);
    if (cover.size < 0) std::ranges::reverse(cover.outline);
    cover.size = std::abs(cover.size);
    covers_.push_back(std::move(cover));
  }

  static bool liesIn(const Bounds& part, const Bounds& whole) {
    return part.low.x >= whole.low.x && part.low.y >= whole.low.y && part.high.x <= whole.high.x &&
           part.high.y <= whole.high.y;
  }

  /// A plate may touch what hides it, as a wall its lid, but not lie on it.
  [[nodiscard]] bool isBehind(const Seen& plate, const Cover& cover) const {
    bool apart = false;
    for (const Point3& corner : plate.corners) {
      const double height = dot(cover.normal, corner) - cover.offset;
      if (height > tolerance_) return false;
      apart = apart || height < -tolerance_;
    }
    return apart;
  }

  /// Whether those of the largest covers that a plate lies behind hide it between them.
  [[nodiscard]] bool hideTogether(const Seen& plate) {
    Some before;
    for (std::size_t i = 0; i < std::min(kLargest, covers_.size()); ++i)
      before[i] = isBehind(plate, covers_[i]);
    const bool isMade = shadows_.contains(before);
    if (before.count() < 2 || (!isMade && shadows_.size() == kShadows)) return false;
    Region& shadow = shadows_[before];
    if (!isMade) shadow = shadowOf(before);
    return std::ranges::any_of(shadow,
                               [&](const Area& area) { return liesInside(plate.outline, area); });
  }

  /// What covers hide between them, with the seams closed where they are hinged to one another.
  [[nodiscard]] Region shadowOf(const Some& some) const {
    constexpr double kSeam = 1e-3;   // mm
    constexpr double kTouch = 1e-5;  // so that what ends at the same rim is inside
    std::vector<Polygon> grown;
    for (std::size_t i = 0; i < some.size(); ++i) {
      if (!some[i]) continue;
      for (const Area& area : offset(region(covers_[i].outline), kSeam))
        grown.push_back(area.outer);
    }
    return offset(unite(grown), kTouch - kSeam);
  }

  double tolerance_;
  std::vector<Cover> covers_;  // largest first
  std::unordered_map<Some, Region> shadows_;
};

}  // namespace

void leaveOutHidden(SceneParts& parts, const Camera& camera, double tolerance) {
  std::vector<Seen> seen;
  for (const Plate& plate : parts.plates) seen.push_back(seenBy(camera, plate));
  Covers covers(parts.plates, seen, camera, tolerance);
  std::vector<int> places;  // of the plates among those that stay; -1 for hidden ones
  std::vector<Plate> plates;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    const bool hidden = covers.hide(seen[i]);
    places.push_back(hidden ? -1 : static_cast<int>(plates.size()));
    if (!hidden) plates.push_back(std::move(parts.plates[i]));
  }
  parts.plates = std::move(plates);
  for (SpaceEdge& edge : parts.edges)
    for (int& plate : edge.plates)
      if (plate >= 0) plate = places[plate];
  // Each edge of a scene belongs to a plate; a crease shows as long as one of its panels does.
  std::erase_if(parts.edges,
                [](const SpaceEdge& edge) { return std::ranges::max(edge.plates) < 0; });
}

}  // namespace creasewright
