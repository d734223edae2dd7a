#include "pages/fold_drawing.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "drawing/role.h"

namespace creasewright {
namespace {

/// Ink on a face of this luminance has a contrast of 3:1 (WCAG 2.1 for graphics).
constexpr double kDark = 0.17;

Colour shownColour(const Facet& facet, std::span<const CardColours> colours) {
  return faceColour(facet.light, surfaceOf(facet), ownColour(facet, colours));
}

bool anyDark(std::span<const CardColours> colours) {
  const auto dark = [](const std::optional<Colour>& colour) {
    return colour && luminance(faceColour(0, Surface::Inside, colour)) < kDark;
  };
  return std::ranges::any_of(
      colours, [&](const CardColours& card) { return dark(card.face) || dark(card.behind()); });
}

/// Whether the facet that is seen at a point is dark; nothing seen is paper.
bool isDarkAt(Point at, const FoldPicture& picture, std::span<const CardColours> colours) {
  for (auto facet = picture.facets.rbegin(); facet != picture.facets.rend(); ++facet)
    if (locate(at, facet->outline) == Side::Inside)
      return luminance(shownColour(*facet, colours)) < kDark;
  return false;
}

}  // namespace

Surface surfaceOf(const Facet& facet) {
  if (facet.panel < 0) return Surface::Product;
  return facet.face == Face::Inside ? Surface::Inside : Surface::Outside;
}

std::optional<Colour> ownColour(const Facet& facet, std::span<const CardColours> colours) {
  if (facet.panel < 0 || static_cast<std::size_t>(facet.panel) >= colours.size())
    return std::nullopt;
  const CardColours& card = colours[static_cast<std::size_t>(facet.panel)];
  return facet.face == Face::Inside ? card.behind() : card.face;
}

std::vector<bool> edgesOnDark(const FoldPicture& picture, std::span<const CardColours> colours) {
  constexpr double kBeside = 0.3;  // mm
  std::vector<bool> onDark(picture.edges.size());
  if (!anyDark(colours)) return onDark;
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const Segment& line = picture.edges[i].line;
    if (line.a == line.b) continue;
    const Point middle = (line.a + line.b) / 2;
    const Point beside = turnLeft(unit(line.b - line.a)) * kBeside;
    onDark[i] =
        isDarkAt(middle + beside, picture, colours) || isDarkAt(middle - beside, picture, colours);
  }
  return onDark;
}

Drawing drawFold(const FoldPicture& picture, std::span<const CardColours> colours, double margin) {
  Drawing out{picture.extent.width() + 2 * margin, picture.extent.height() + 2 * margin, {}, {}};
  for (const Facet& facet : picture.facets) {
    out.paths.push_back({.role = Role::Face,
                         .rings = {facet.outline},
                         .closed = true,
                         .filled = true,
                         .light = facet.light,
                         .surface = surfaceOf(facet),
                         .colour = ownColour(facet, colours)});
  }
  PathItem dark{.role = Role::Edge, .rings = {}};
  PathItem light{.role = Role::Edge, .rings = {}, .colour = kLightEdge};
  const std::vector<bool> onDark = edgesOnDark(picture, colours);
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const Segment& line = picture.edges[i].line;
    (onDark[i] ? light : dark).rings.push_back({line.a, line.b});
  }
  for (PathItem* edges : {&dark, &light})
    if (!edges->rings.empty()) out.paths.push_back(std::move(*edges));
  return moved(std::move(out), Point{margin, margin} - picture.extent.low);
}

}  // namespace creasewright
