#include "extras/ribbon_strips.h"

namespace creasewright {
namespace {

struct RibbonStrip {
  int panel = 0;
  Point3 way;
  Segment end;
};

/// One ribbon: no line between its strips. The second one's start is its hinge.
void join(const RibbonStrip& from, const RibbonStrip& to, bool smooth, Net& net) {
  constexpr double kSmall = 0.87;  // cosine of 30 degrees
  if (!smooth && dot(from.way, to.way) < kSmall) return;
  Crease bend;
  bend.parent = from.panel;
  bend.child = to.panel;
  bend.onParent = from.end;
  bend.kind = CreaseKind::Flat;
  net.creases.push_back(bend);
}

}  // namespace

int addRibbonPanel(Polygon outline, const Transform& place, Net& net, Pose& pose) {
  Panel panel;
  panel.id = "ribbon-strip";
  panel.edges.assign(outline.size(), "edge");
  panel.outline = std::move(outline);
  net.panels.push_back(std::move(panel));
  pose.push_back(place);
  return static_cast<int>(net.panels.size()) - 1;
}

void addRibbonLine(const RibbonLine& line, Net& net, Pose& pose) {
  constexpr double kNothing = 1e-6;  // mm
  std::vector<RibbonStrip> strips;
  const std::size_t count = line.points.size();
  for (std::size_t i = 0; i + (line.closed ? 0 : 1) < count; ++i) {
    const std::size_t next = (i + 1) % count;
    const Point3 step = line.points[next] - line.points[i];
    const double length = norm(step);
    if (length < kNothing) continue;
    const double from = line.halves[i];
    const double to = line.halves[next];
    const Transform place =
        Transform::frame(line.points[i] - line.across * from, line.across, step * (1 / length));
    RibbonStrip strip{0, step * (1 / length), {{from + to, length}, {from - to, length}}};
    strip.panel = addRibbonPanel({{0, 0}, {2 * from, 0}, {from + to, length}, {from - to, length}},
                                 place, net, pose);
    if (!strips.empty()) join(strips.back(), strip, line.smooth, net);
    strips.push_back(strip);
  }
  if (line.closed && strips.size() > 2) join(strips.back(), strips.front(), line.smooth, net);
}

}  // namespace creasewright
