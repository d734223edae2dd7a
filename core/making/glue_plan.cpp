#include "making/glue_plan.h"

#include "net/pose.h"

namespace creasewright {
namespace {

constexpr double kMargin = 1;  // mm from creases and edges: common practice, no published source

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

Region adhesiveRegion(const Mate& mate, const FlatNet& flat) {
  const auto panel = static_cast<std::size_t>(mate.panel);
  Polygon outline = flat.panels[panel];
  if (!mate.patch.empty()) {
    outline.clear();
    for (const Point& p : mate.patch) outline.push_back(flat.place(mate.panel, p));
  }
  const Region flap = region(outline);
  const Region inset = offset(flap, -kMargin);
  return inset.empty() ? middleStrip(flap) : inset;
}

}  // namespace

std::vector<GlueArea> planGlue(const Net& net, const FlatNet& flat) {
  const Pose folded = pose(net, 1.0);
  std::vector<GlueArea> plan;
  for (const Mate& mate : net.mates) {
    if (mate.method != Method::Glue) continue;
    for (const Area& area : adhesiveRegion(mate, flat))
      plan.push_back({mate.panel, mate.onto, mate.face, meetingFace(mate, folded), area.outer});
  }
  return plan;
}

}  // namespace creasewright
