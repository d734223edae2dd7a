#include "folding/surfaces/hidden_plates.h"

#include <algorithm>
#include <utility>

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
};

class Covers {
 public:
  Covers(const std::vector<Plate>& plates, const std::vector<Seen>& seen, const Camera& camera,
         double tolerance)
      : tolerance_(tolerance) {
    for (std::size_t i = 0; i < plates.size(); ++i) add(plates[i], seen[i], camera);
  }

  [[nodiscard]] bool hide(const Seen& plate) const {
    return !plate.corners.empty() && std::ranges::any_of(
                                         covers_,
                                         [&](const Cover& cover) {
                                           return liesIn(plate.box, cover.box) &&
                                                  isBehind(plate, cover) &&
                                                  liesWellInside(plate.outline, cover.outline, 0);
                                         });
  }

 private:
  void add(const Plate& plate, const Seen& seen, const Camera& camera) {
    const Point3 normal = plate.frame.normal();
    const double facing = dot(normal, camera.towardsEye);
    const bool whole = plate.shape.size() == 1 && plate.shape.front().holes.empty();
    if (plate.owner < 0 || !whole || std::abs(facing) < 1e-6) return;
    Cover cover{facing < 0 ? normal * -1 : normal, 0, seen.outline, seen.box};
    cover.offset = dot(cover.normal, seen.corners.front());
    if (signedArea(cover.outline) < 0) std::ranges::reverse(cover.outline);
    covers_.push_back(std::move(cover));
  }

  static bool liesIn(const Bounds& part, const Bounds& whole) {
    return part.low.x >= whole.low.x && part.low.y >= whole.low.y && part.high.x <= whole.high.x &&
           part.high.y <= whole.high.y;
  }

  [[nodiscard]] bool isBehind(const Seen& plate, const Cover& cover) const {
    return std::ranges::all_of(
        plate.corners,
        [&](const Point3& corner) {
          return dot(cover.normal, corner) - cover.offset < -tolerance_;
        });
  }

  double tolerance_;
  std::vector<Cover> covers_;
};

}  // namespace

void leaveOutHidden(SceneParts& parts, const Camera& camera, double tolerance) {
  std::vector<Seen> seen;
  for (const Plate& plate : parts.plates) seen.push_back(seenBy(camera, plate));
  const Covers covers(parts.plates, seen, camera, tolerance);
  std::vector<int> places;  // of the plates among those that stay; -1 for hidden ones
  std::vector<Plate> plates;
  for (std::size_t i = 0; i < seen.size(); ++i) {
    const bool hidden = covers.hide(seen[i]);
    places.push_back(hidden ? -1 : static_cast<int>(plates.size()));
    if (!hidden) plates.push_back(std::move(parts.plates[i]));
  }
  parts.plates = std::move(plates);
  const auto isHidden = [&](int plate) { return plate >= 0 && places[plate] < 0; };
  std::erase_if(parts.edges, [&](const SpaceEdge& edge) { return isHidden(edge.plates[0]); });
  for (SpaceEdge& edge : parts.edges)
    for (int& plate : edge.plates)
      if (plate >= 0) plate = places[plate];
}

}  // namespace creasewright
