#include "styles/parts/thumb_notch.h"

#include <algorithm>
#include <cassert>

namespace creasewright {

Shape withThumbNotch(Shape shape, std::string_view edge, double radius) {
  const auto found = std::ranges::find(shape.edges, edge);
  assert(found != shape.edges.end());
  const auto at = found - shape.edges.begin();
  const Point a = shape.outline[static_cast<std::size_t>(at)];
  const Point b = shape.outline[(static_cast<std::size_t>(at) + 1) % shape.outline.size()];
  const Point middle = (a + b) / 2;
  const Point from = middle - unit(b - a) * radius;
  Polyline cut{from};
  for (const Point& p : arc(from, middle, -180)) cut.push_back(p);
  shape.outline.insert(shape.outline.begin() + at + 1, cut.begin(), cut.end());
  std::vector<std::string> names(cut.size() - 1, std::string(edge) + "-notch");
  names.emplace_back(edge);
  shape.edges.insert(shape.edges.begin() + at + 1, names.begin(), names.end());
  return shape;
}

}  // namespace creasewright
