#include "pages/fold_drawing.h"

#include "drawing/arrange.h"

namespace creasewright {

Surface surfaceOf(const Facet& facet) {
  if (facet.panel < 0) return Surface::Product;
  return facet.face == Face::Inside ? Surface::Inside : Surface::Outside;
}

Drawing drawFold(const FoldPicture& picture, double margin) {
  Drawing out{picture.extent.width() + 2 * margin, picture.extent.height() + 2 * margin, {}, {}};
  for (const Facet& facet : picture.facets) {
    out.paths.push_back({.role = Role::Face,
                         .rings = {facet.outline},
                         .closed = true,
                         .filled = true,
                         .light = facet.light,
                         .surface = surfaceOf(facet)});
  }
  PathItem edges{.role = Role::Edge, .rings = {}};
  for (const VisibleEdge& edge : picture.edges) edges.rings.push_back({edge.line.a, edge.line.b});
  if (!edges.rings.empty()) out.paths.push_back(std::move(edges));
  return moved(std::move(out), Point{margin, margin} - picture.extent.low);
}

}  // namespace creasewright
