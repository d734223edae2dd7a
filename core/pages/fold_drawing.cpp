#include "pages/fold_drawing.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "drawing/role.h"
#include "geometry/region.h"
#include "pages/fold_words.h"
#include "pages/paper_print.h"
#include "patterns/pattern.h"
#include "patterns/pattern_on.h"

namespace creasewright {
namespace {

/// Ink on a face of this luminance has a contrast of 3:1 (WCAG 2.1 for graphics).
constexpr double kDark = 0.17;

Colour shownColour(const Facet& facet, const FoldPicture& picture,
                   std::span<const PanelLook> looks) {
  return faceColour(facet.light, surfaceOf(facet), ownColour(facet, picture, looks));
}

const PanelLook* lookOf(const Facet& facet, std::span<const PanelLook> looks) {
  if (facet.panel < 0 || static_cast<std::size_t>(facet.panel) >= looks.size()) return nullptr;
  return &looks[static_cast<std::size_t>(facet.panel)];
}

bool anyDark(const FoldPicture& picture, std::span<const PanelLook> looks) {
  const auto isDark = [](Colour colour) {
    return luminance(faceColour(0, Surface::Inside, colour)) < kDark;
  };
  if (picture.solid && isDark(*picture.solid)) return true;
  return std::ranges::any_of(looks, [&](const PanelLook& look) {
    const CardColours& card = look.colours;
    return (card.face && isDark(*card.face)) || (card.behind() && isDark(*card.behind())) ||
           (card.pattern && std::ranges::any_of(coloursOf(*card.pattern), isDark));
  });
}

/// How an edge over a facet has to be drawn.
EdgeTone toneOn(const Facet& facet, const FoldPicture& picture, std::span<const PanelLook> looks) {
  if (luminance(shownColour(facet, picture, looks)) < kDark) return EdgeTone::Light;
  const PanelLook* look = lookOf(facet, looks);
  if (look == nullptr) return EdgeTone::Ink;
  const PaperPattern* paper = look->colours.patternOf(facet.face == Face::Inside);
  if (paper == nullptr) return EdgeTone::Ink;
  const bool dark = std::ranges::any_of(coloursOf(*paper), [&](const Colour& ink) {
    return luminance(faceColour(facet.light, surfaceOf(facet), ink)) < kDark;
  });
  return dark ? EdgeTone::CasedInk : EdgeTone::Ink;
}

/// Tones at points of a picture; that of a facet is found once.
class Tones {
 public:
  Tones(const FoldPicture& picture, std::span<const PanelLook> looks)
      : picture_(picture), looks_(looks), found_(picture.facets.size()) {
    for (const Facet& facet : picture.facets) bounds_.push_back(bounds(facet.outline));
  }

  /// On the facet that is seen there; paper is light.
  [[nodiscard]] EdgeTone at(Point point) {
    for (std::size_t i = bounds_.size(); i-- > 0;) {
      const Facet& facet = picture_.facets[i];
      if (!holds(bounds_[i], point) || locate(point, facet.outline) != Side::Inside) continue;
      if (!found_[i]) found_[i] = toneOn(facet, picture_, looks_);
      return *found_[i];
    }
    return EdgeTone::Ink;
  }

 private:
  static bool holds(const Bounds& box, Point p) {
    return p.x > box.low.x && p.x < box.high.x && p.y > box.low.y && p.y < box.high.y;
  }

  const FoldPicture& picture_;
  std::span<const PanelLook> looks_;
  std::vector<Bounds> bounds_;
  std::vector<std::optional<EdgeTone>> found_;  // by facet
};

/// A facet's inks, over its ground.
void addInks(const Facet& facet, const SeenPattern& seen, Drawing& out) {
  const std::vector<Inked> inks = patternOn(region(facet.outline), *seen.paper, seen.place);
  for (std::size_t i = 1; i < inks.size(); ++i) {
    PathItem item{.role = Role::Face,
                  .rings = {},
                  .closed = true,
                  .filled = true,
                  .light = facet.light,
                  .surface = surfaceOf(facet),
                  .colour = inks[i].colour,
                  .printed = true};
    for (const Area& area : inks[i].shape) {
      item.rings.push_back(area.outer);
      item.rings.insert(item.rings.end(), area.holes.begin(), area.holes.end());
    }
    out.paths.push_back(std::move(item));
  }
}

}  // namespace

Surface surfaceOf(const Facet& facet) {
  if (facet.panel < 0) return Surface::Product;
  return facet.face == Face::Inside ? Surface::Inside : Surface::Outside;
}

std::optional<Colour> ownColour(const Facet& facet, const FoldPicture& picture,
                                std::span<const PanelLook> looks) {
  if (facet.panel < 0) return picture.solid;
  const PanelLook* look = lookOf(facet, looks);
  if (look == nullptr) return std::nullopt;
  const bool behind = facet.face == Face::Inside;
  const PaperPattern* paper = look->colours.patternOf(behind);
  if (paper != nullptr && !liesOnce(paper)) return meanColour(*paper);
  return behind ? look->colours.behind() : look->colours.face;
}

SeenPattern patternSeen(const Facet& facet, const FoldPicture& picture,
                        std::span<const PanelLook> looks) {
  const PanelLook* look = lookOf(facet, looks);
  if (look == nullptr) return {};
  const PaperPattern* paper = look->colours.patternOf(facet.face == Face::Inside);
  if (paper == nullptr) return {};
  return {paper, picture.planes.at(static_cast<std::size_t>(facet.panel)).after(look->paper)};
}

std::vector<EdgeTone> edgeTones(const FoldPicture& picture, std::span<const PanelLook> looks) {
  constexpr double kBeside = 0.3;  // mm
  std::vector<EdgeTone> tones(picture.edges.size(), EdgeTone::Ink);
  if (!anyDark(picture, looks)) return tones;
  Tones seen(picture, looks);
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const Segment& line = picture.edges[i].line;
    if (line.a == line.b) continue;
    const Point middle = (line.a + line.b) / 2;
    const Point beside = turnLeft(unit(line.b - line.a)) * kBeside;
    const EdgeTone left = seen.at(middle + beside);
    const EdgeTone right = seen.at(middle - beside);
    if (left == EdgeTone::Light || right == EdgeTone::Light)
      tones[i] = EdgeTone::Light;
    else
      tones[i] = std::max(left, right);
  }
  return tones;
}

Drawing drawFold(const FoldPicture& picture, std::span<const PanelLook> looks, double margin,
                 std::span<const Inscription> words) {
  Drawing out{picture.extent.width() + 2 * margin, picture.extent.height() + 2 * margin, {}, {}};
  for (const Facet& facet : picture.facets) {
    const SeenPattern seen = patternSeen(facet, picture, looks);
    out.paths.push_back({.role = Role::Face,
                         .rings = {facet.outline},
                         .closed = true,
                         .filled = true,
                         .light = facet.light,
                         .surface = surfaceOf(facet),
                         .colour = seen.paper == nullptr || seen.paper->picture
                                       ? ownColour(facet, picture, looks)
                                       : coloursOf(*seen.paper)[0]});
    if (seen.paper == nullptr) continue;
    if (seen.paper->picture)
      out.paths.back().picture = pictureOn(*seen.paper, seen.place);
    else
      addInks(facet, seen, out);
  }
  append(out, wordsSeen(picture, looks, words));
  PathItem casing{.role = Role::Edge, .rings = {}, .colour = kLightEdge, .width = kCasing};
  PathItem ink{.role = Role::Edge, .rings = {}};
  PathItem light{.role = Role::Edge, .rings = {}, .colour = kLightEdge};
  const std::vector<EdgeTone> tones = edgeTones(picture, looks);
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const Segment& line = picture.edges[i].line;
    if (tones[i] == EdgeTone::CasedInk) casing.rings.push_back({line.a, line.b});
    (tones[i] == EdgeTone::Light ? light : ink).rings.push_back({line.a, line.b});
  }
  for (PathItem* edges : {&casing, &ink, &light})
    if (!edges->rings.empty()) out.paths.push_back(std::move(*edges));
  return moved(std::move(out), Point{margin, margin} - picture.extent.low);
}

}  // namespace creasewright
