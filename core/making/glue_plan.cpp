#include "making/glue_plan.h"

#include <algorithm>
#include <utility>

#include "net/pose.h"

namespace creasewright {
namespace {

constexpr double kMargin = 1;  // mm from creases and edges: common practice, no published source
constexpr double kLeastGlued = 1;  // mm2: less takes no adhesive

/// The flap's face that meets the target once folded: the one that looks against the target's.
Face meetingFace(const Mate& mate, const Pose& folded) {
  const Point3 target = folded[static_cast<std::size_t>(mate.onto)].normal();
  const Point3 flap = folded[static_cast<std::size_t>(mate.panel)].normal();
  const bool against = dot(target, flap) < 0;
  return against == (mate.face == Face::Inside) ? Face::Inside : Face::Outside;
}

/// Too narrow for the margin: most of the largest inset that leaves anything, a strip along the
/// middle.
Region middleStrip(const Region& flap) {
  double fits = 0;
  double empty = kMargin;
  for (int step = 0; step < 20; ++step) {
    const double inset = (fits + empty) / 2;
    (offset(flap, -inset).empty() ? empty : fits) = inset;
  }
  constexpr double kShare = 0.9;
  return offset(flap, -kShare * fits);
}

/// An area with holes as areas without: parted along an upright line through the middle of each.
Region withoutHoles(const Area& area, const Bounds& box) {
  if (area.holes.empty()) return {area};
  const Bounds hole = bounds(area.holes.front());
  const double at = (hole.low.x + hole.high.x) / 2;
  const Polygon left{box.low, {at, box.low.y}, {at, box.high.y}, {box.low.x, box.high.y}};
  const Polygon right{{at, box.low.y}, {box.high.x, box.low.y}, box.high, {at, box.high.y}};
  Region parts;
  for (const Polygon& half : {left, right})
    for (const Area& part : intersect({area}, region(half)))
      for (Area& whole : withoutHoles(part, box)) parts.push_back(std::move(whole));
  return parts;
}

/// Without openings and the margin round them.
Region spared(Region adhesive, const std::vector<Polygon>& openings, const Bounds& box) {
  if (openings.empty()) return adhesive;
  Region parts;
  for (const Area& area : subtract(adhesive, offset(unite(openings), kMargin)))
    for (Area& part : withoutHoles(area, box))
      if (creasewright::area(Region{part}) > kLeastGlued) parts.push_back(std::move(part));
  return parts;
}

/// The openings of a flap and of what it is glued onto, in blank coordinates.
std::vector<Polygon> openingsAt(const Net& net, const Mate& mate, const FlatNet& flat,
                                const Pose& folded) {
  std::vector<Polygon> openings = flat.openings[static_cast<std::size_t>(mate.panel)];
  const Transform there = folded[static_cast<std::size_t>(mate.panel)].inverse().after(
      folded[static_cast<std::size_t>(mate.onto)]);
  for (const Polygon& opening : net.panels[static_cast<std::size_t>(mate.onto)].openings) {
    Polygon seen;
    for (const Point& p : opening) {
      const Point3 at = there.apply(p);
      seen.push_back(flat.place(mate.panel, {at.x, at.y}));
    }
    openings.push_back(std::move(seen));
  }
  for (Polygon& opening : openings)
    if (signedArea(opening) < 0) std::ranges::reverse(opening);
  return openings;
}

Region adhesiveRegion(const Mate& mate, const FlatNet& flat, const std::vector<Polygon>& openings) {
  const auto panel = static_cast<std::size_t>(mate.panel);
  const Polygon& outline = flat.panels[panel];
  Region flap = region(outline);
  if (!mate.patch.empty()) {
    Polygon patch;
    for (const Point& p : mate.patch) patch.push_back(flat.place(mate.panel, p));
    flap = intersect(flap, region(patch));
  }
  Region inset = offset(flap, -kMargin);
  if (inset.empty()) inset = middleStrip(flap);
  return spared(std::move(inset), openings, bounds(outline));
}

/// A part of a flap whose face is glued anyway, all over, to what lies behind.
bool isGluedAnyway(const Mate& part, const Net& net, const Pose& folded) {
  return !part.patch.empty() &&
         std::ranges::any_of(
             net.mates,
             [&](const Mate& whole) {
               return whole.panel == part.panel && whole.patch.empty() &&
                      whole.method == Method::Glue &&
                      meetingFace(whole, folded) == meetingFace(part, folded);
             });
}

}  // namespace

std::vector<GlueArea> planGlue(const Net& net, const FlatNet& flat) {
  const Pose folded = pose(net, 1.0);
  std::vector<GlueArea> plan;
  for (const Mate& mate : net.mates) {
    if (mate.method != Method::Glue || isGluedAnyway(mate, net, folded)) continue;
    for (const Area& area : adhesiveRegion(mate, flat, openingsAt(net, mate, flat, folded)))
      plan.push_back({mate.panel, mate.onto, mate.face, meetingFace(mate, folded), area.outer});
  }
  return plan;
}

std::vector<GlueArea> planPieceGlue(const Holding& held, const Net& net, const FlatNet& flat,
                                    Face flapFace) {
  constexpr double kFromEdges = 3;
  constexpr double kWidest = 14;
  const std::optional<int> panel = net.find(held.panel);
  std::vector<GlueArea> plan;
  if (held.by != Hold::Glue || !panel) return plan;
  const auto index = static_cast<std::size_t>(*panel);
  const Polygon& outline = flat.panels[index];
  for (const Area& inset : offset(region(outline), -kFromEdges)) {
    const Bounds box = bounds(inset.outer);
    const double band = std::min(kWidest, box.width() / 2);
    const Point low{box.low.x + band, 0};
    const Point high{box.high.x - band, 0};
    for (const Polygon& end : {clipLeftOf(inset.outer, low, low + Point{0, 1}),
                               clipLeftOf(inset.outer, high, high - Point{0, 1})})
      for (const Area& part : spared(region(end), flat.openings[index], bounds(outline)))
        plan.push_back({*panel, -1, held.face, flapFace, part.outer, held.to, held.onto});
  }
  return plan;
}

}  // namespace creasewright
