#include "folding/surfaces/scene.h"

#include <algorithm>
#include <utility>

#include "folding/keyhole.h"
#include "folding/surfaces/bsp.h"
#include "folding/surfaces/hidden_plates.h"
#include "folding/surfaces/scene_parts.h"

namespace creasewright {
namespace {

/// Half-lit from the lamp, so that no face is black.
double lightOn(Point3 normal, const Camera& camera) {
  const Point3 lamp = unit(kLamp);
  const Point3 seen{dot(normal, camera.right), dot(normal, camera.up),
                    dot(normal, camera.towardsEye)};
  return std::clamp(0.5 + 0.5 * dot(seen, lamp), 0.0, 1.0);
}

void addFacets(const Plate& plate, const Camera& camera, std::vector<Facet>& facets) {
  Point3 normal = plate.frame.normal();
  const double facing = dot(normal, camera.towardsEye);
  if (facing < 0) normal = normal * -1;
  const double light = lightOn(normal, camera);
  const bool solid = plate.owner < 0;
  const Face face = facing > 0 && !solid ? Face::Inside : Face::Outside;
  for (const Area& area : plate.shape) {
    Polygon outline;
    for (const Point& corner : keyhole(area))
      outline.push_back(camera.project(plate.frame.apply(corner)));
    const double size = signedArea(outline);
    if (std::abs(size) < 1e-6) continue;
    if (size < 0) std::reverse(outline.begin(), outline.end());
    facets.push_back({solid ? -1 : plate.owner, face, std::move(outline), light});
  }
}

/// Leaves out what one later facet hides whole.
void dropHidden(std::vector<Facet>& facets, double tolerance) {
  std::vector<Facet> seen;
  for (auto facet = facets.begin(); facet != facets.end(); ++facet) {
    const bool hidden = std::any_of(facet + 1, facets.end(), [&](const Facet& later) {
      return liesWellInside(facet->outline, later.outline, tolerance);
    });
    if (!hidden) seen.push_back(std::move(*facet));
  }
  facets = std::move(seen);
}

}  // namespace

FoldPicture drawFolded(const Net& net, const Pose& pose, const View& view, Point3 up,
                       const std::vector<Solid>& solids) {
  FoldPicture picture;
  if (pose.size() < net.panels.size()) return picture;
  const Camera eye = camera(view, up);
  SceneParts parts = sceneParts(net, pose, solids, eye.towardsEye);
  const double tolerance = 1e-7 * parts.size;
  leaveOutHidden(parts, eye, tolerance);
  picture.edges = visibleEdges(parts.edges, parts.plates, eye, tolerance);
  const Bsp tree(std::move(parts.plates), tolerance);
  for (const Plate* plate : tree.backToFront(eye.towardsEye))
    addFacets(*plate, eye, picture.facets);
  dropHidden(picture.facets, tolerance);
  for (const Transform& placed : pose)
    picture.planes.push_back({eye.project(placed.apply(Point{})),
                              eye.project(placed.turn({1, 0, 0})),
                              eye.project(placed.turn({0, 1, 0}))});
  if (!solids.empty()) picture.solid = solids.front().colour;
  bool first = true;
  const auto add = [&](Point p) { include(picture.extent, p, std::exchange(first, false)); };
  for (const Facet& facet : picture.facets) std::ranges::for_each(facet.outline, add);
  for (const VisibleEdge& edge : picture.edges) {
    add(edge.line.a);
    add(edge.line.b);
  }
  return picture;
}

}  // namespace creasewright
