#include "extras/hanging.h"

#include <algorithm>
#include <cmath>

#include "extras/ribbon_way.h"
#include "folding/surfaces/upright.h"

namespace creasewright {
namespace {

constexpr double kTagOff = 2.4;  // mm from the card, over ribbons that cross and under a bow
constexpr double kEdge = 2;      // mm from the edges of a side
constexpr double kFromKnot = 6;  // mm from where ribbons cross to the hole

/// A tag by its hole, mm.
struct Tag {
  Point hole;
  double width = 0;
  double above = 0;  ///< from the hole to its upper end
  double below = 0;
};

std::optional<Tag> tagOf(const Panel& panel) {
  if (panel.openings.empty()) return std::nullopt;
  const Bounds box = bounds(panel.outline);
  const Bounds hole = bounds(panel.openings.front());
  const Point middle = (hole.low + hole.high) / 2;
  return Tag{middle, 2 * std::max(middle.x - box.low.x, box.high.x - middle.x),
             box.high.y - middle.y, middle.y - box.low.y};
}

/// A side of the box as one looks at it.
struct SideOfBox {
  Point3 middle;  ///< on its card
  Point3 out;
  Point3 up;
  double width = 0;
  double height = 0;
  bool level = false;  ///< the ribbon runs along it level
  const RibbonWay* way = nullptr;
  std::size_t axis = 0;   ///< square to the side
  std::size_t along = 0;  ///< in which the ribbon runs
  double sign = 1;        ///< of the side on its axis
};

/// How far out a way runs at a place along it, mm from the middle of the box.
double outAt(const SideOfBox& side, double along) {
  const bool first = side.axis == (side.way->axis + 1) % 3;
  const auto flat = [&](Point p) { return first ? p : Point{p.y, p.x}; };
  double most = 0;
  const Polygon& ring = side.way->outline;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Point a = flat(ring[i]);
    const Point b = flat(ring[(i + 1) % ring.size()]);
    if ((a.y > along) == (b.y > along)) continue;
    most = std::max(most, side.sign * (a.x + (b.x - a.x) * (along - a.y) / (b.y - a.y)));
  }
  return most;
}

/// Where the hole goes on a side, from its middle upwards; nothing where the tag has no room or the
/// ribbon does not lie behind the hole.
std::optional<double> holeOn(const OutsideBox& box, const SideOfBox& side, const Tag& tag) {
  if (side.width < tag.width + 2 * kEdge) return std::nullopt;
  // On a level ribbon it hangs from the middle, else as high as it may where the ribbon lies on the
  // side.
  constexpr double kClose = 1.5;  // mm
  constexpr double kDown = 1;     // mm
  const double highest = side.level ? 0 : side.height / 2 - kEdge - tag.above;
  if (highest + tag.above > side.height / 2 - kEdge + 1e-9) return std::nullopt;
  const double way = dot(box.axes.at(side.along), side.up) < 0 ? -1 : 1;
  for (double at = highest; at - tag.below >= -side.height / 2 + kEdge; at -= kDown) {
    if (outAt(side, side.level ? 0 : at * way) >= box.sizes.at(side.axis) / 2 - kClose) return at;
    if (side.level) break;
  }
  return std::nullopt;
}

/// The tag as it is drawn, from the inside: up along y, into the box along z.
Transform placeAt(const SideOfBox& side, const Tag& tag, double hole) {
  const Point3 x = cross(side.up, side.out * -1);
  const Transform there =
      Transform::frame(side.middle + side.up * hole + side.out * kTagOff, x, side.up);
  return there.after(Transform::translation({-tag.hole.x, -tag.hole.y, 0}));
}

/// The upright sides that a way runs along, those that are seen best first.
std::vector<SideOfBox> uprightSides(const RibbonNeed& ribbon, Point3 eye) {
  std::vector<SideOfBox> sides;
  const OutsideBox& box = ribbon.round;
  const Point3 up = box.up;
  for (const RibbonWay& way : ribbon.ways)
    for (const std::size_t side : {(way.axis + 1) % 3, (way.axis + 2) % 3}) {
      const std::size_t along = 3 - way.axis - side;
      if (std::abs(dot(box.axes.at(side), up)) > 0.3) continue;
      const bool level = std::abs(dot(box.axes.at(along), up)) < 0.7;
      const std::size_t tall = level ? way.axis : along;
      const std::size_t wide = 3 - side - tall;
      for (const double sign : {1.0, -1.0}) {
        const Point3 out = box.axes.at(side) * sign;
        const Point3 middle =
            box.centre + out * std::max(box.sizes.at(side) / 2, reachOf(way, side, sign));
        sides.push_back({middle, out, up, box.sizes.at(wide), box.sizes.at(tall), level, &way, side,
                         along, sign});
      }
    }
  std::ranges::stable_sort(
      sides, [&](const SideOfBox& a,
                 const SideOfBox& b) { return dot(a.out, eye) > dot(b.out, eye) + 1e-6; });
  std::erase_if(sides, [&](const SideOfBox& side) { return dot(side.out, eye) < 0.2; });
  return sides;
}

/// Whether the top is flat along the ribbon under corners of a tag, about the crossing.
bool isFlatUnder(const RibbonNeed& ribbon, const Transform& crossing, const Polygon& corners) {
  constexpr double kLower = 1.5;  // mm
  const OutsideBox& box = ribbon.round;
  const double sign = dot(box.axes[2], box.up) < 0 ? -1 : 1;
  for (const RibbonWay& way : ribbon.ways) {
    const std::size_t along = 1 - way.axis;
    const SideOfBox top{{}, {}, {}, 0, 0, false, &way, 2, along, sign};
    const double least = reachOf(way, 2, sign) - kLower;
    for (const Point& p : corners)
      if (outAt(top, dot(crossing.turn({p.x, p.y, 0}), box.axes.at(along))) < least) return false;
  }
  return true;
}

/// Lying by the crossing on top, towards who looks, or else to a side; where it has no room, over
/// the edge, its middle on the box.
std::optional<Transform> lyingOn(const RibbonNeed& ribbon, const Tag& tag) {
  const OutsideBox& box = ribbon.round;
  if (ribbon.ways.size() == 1 && ribbon.ways.front().axis == 2) return std::nullopt;
  for (const bool over : {false, true})
    for (const double turn : {0.0, -90.0}) {
      const Transform crossing =
          crossingOf(ribbon).after(Transform::rotationZ(Angle::degrees(turn)));
      const std::size_t wide = std::abs(dot(crossing.turn({1, 0, 0}), box.axes[0])) > 0.7 ? 0 : 1;
      const double far = kFromKnot + (over ? tag.below / 2 : tag.below);
      const double half = std::min(tag.width, box.sizes.at(wide) - 2 * kEdge) / 2;
      const bool fits = (over || box.sizes.at(wide) >= tag.width + 2 * kEdge) &&
                        box.sizes.at(1 - wide) / 2 >= far + kEdge;
      if (fits &&
          isFlatUnder(ribbon, crossing, {{-half, 0}, {half, 0}, {half, -far}, {-half, -far}}))
        return crossing.after(Transform::translation({-tag.hole.x, -kFromKnot - tag.hole.y, -0.5}));
    }
  return std::nullopt;
}

std::optional<Transform> placeOf(const RibbonNeed& ribbon, const Tag& tag) {
  const Point3 up = ribbon.round.up;
  const Point3 eye = camera(frontView(standardView(), up), up).towardsEye;
  for (const SideOfBox& side : uprightSides(ribbon, eye))
    if (const std::optional<double> hole = holeOn(ribbon.round, side, tag))
      return placeAt(side, tag, *hole);
  return lyingOn(ribbon, tag);
}

const Panel* lowestOf(const std::vector<const Panel*>& layers) {
  const auto sizeOf = [](const Panel* panel) { return std::abs(signedArea(panel->outline)); };
  return *std::ranges::max_element(layers, {}, sizeOf);
}

}  // namespace

std::optional<double> tallestOn(const RibbonNeed& ribbon, const std::vector<const Panel*>& layers) {
  if (layers.empty() || ribbon.ways.empty()) return std::nullopt;
  const std::optional<Tag> whole = tagOf(*lowestOf(layers));
  if (!whole) return std::nullopt;
  constexpr int kSteps = 50;
  for (int i = kSteps; i > 0; --i) {
    const double share = static_cast<double>(i) / kSteps;
    const Tag part{whole->hole, whole->width * share, whole->above * share, whole->below * share};
    if (placeOf(ribbon, part)) return part.above + part.below;
  }
  return std::nullopt;
}

std::vector<Transform> hangingOn(const RibbonNeed& ribbon,
                                 const std::vector<const Panel*>& layers) {
  if (layers.empty() || ribbon.ways.empty()) return {};
  const Panel* lowest = lowestOf(layers);
  const std::optional<Tag> whole = tagOf(*lowest);
  const std::optional<Transform> place = whole ? placeOf(ribbon, *whole) : std::nullopt;
  if (!place) return {};
  std::vector<Transform> places;
  for (const Panel* layer : layers) {
    const std::optional<Tag> own = tagOf(*layer);
    if (!own) return {};
    constexpr double kApart = 0.4;  // mm between layers
    const Point shift = whole->hole - own->hole;
    places.push_back(
        place->after(Transform::translation({shift.x, shift.y, layer == lowest ? 0 : -kApart})));
  }
  return places;
}

}  // namespace creasewright
