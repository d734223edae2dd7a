#include "net/net_problems.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "geometry/apart.h"

namespace creasewright {
namespace {

constexpr double kSamePlace = 1e-6;      // mm, generated nets are exact to rounding
constexpr double kSmallestPanel = 1;     // mm2
constexpr double kOverlapSliver = 0.05;  // mm, shared creases leave slivers thinner than this
constexpr double kShortestCrease = 3;    // mm, shorter ones cannot be scored by hand

void checkNames(const Net& net, Problems& found) {
  std::set<std::string_view> seen;
  for (const Panel& panel : net.panels)
    if (!seen.insert(panel.id).second) found.push_back({ProblemCode::DuplicateName, panel.id, {}});
}

void checkOutline(const Panel& panel, Problems& found) {
  if (!isSimple(panel.outline)) {
    found.push_back({ProblemCode::PanelNotSimple, panel.id, {}});
    return;
  }
  const double area = signedArea(panel.outline);
  if (area < kSmallestPanel) found.push_back({ProblemCode::PanelTooSmall, panel.id, {area}});
}

void checkOpenings(const Panel& panel, Problems& found) {
  const auto leaves = [&](const Polygon& opening) {
    return !plainlyInside(opening, panel.outline, kSamePlace) &&
           area(subtract(region(opening), region(panel.outline))) > kSamePlace;
  };
  for (const Polygon& opening : panel.openings)
    if (!isSimple(opening) || leaves(opening))
      found.push_back({ProblemCode::OpeningOutside, panel.id, {}});
}

bool boxesApart(const Bounds& a, const Bounds& b) {
  return a.high.x <= b.low.x + kOverlapSliver || b.high.x <= a.low.x + kOverlapSliver ||
         a.high.y <= b.low.y + kOverlapSliver || b.high.y <= a.low.y + kOverlapSliver;
}

void checkOverlaps(const Net& net, const FlatNet& flat, Problems& found) {
  std::vector<Bounds> boxes;
  boxes.reserve(flat.panels.size());
  for (const Polygon& panel : flat.panels) boxes.push_back(bounds(panel));
  for (std::size_t i = 0; i < flat.panels.size(); ++i) {
    for (std::size_t j = i + 1; j < flat.panels.size(); ++j) {
      if (boxesApart(boxes[i], boxes[j])) continue;
      if (partedByEdge(flat.panels[i], flat.panels[j], kSamePlace)) continue;
      const Region common = intersect({{flat.panels[i], {}}}, {{flat.panels[j], {}}});
      if (area(common) <= kOverlapSliver * kOverlapSliver) continue;
      if (offset(common, -kOverlapSliver / 2).empty()) continue;
      found.push_back(
          {ProblemCode::PanelsOverlap, net.panels[i].id, {net.panels[j].id, area(common)}});
    }
  }
}

bool liesOnBoundary(const Segment& s, const Polygon& outline) {
  constexpr int kSamples = 9;
  for (int i = 0; i <= kSamples; ++i) {
    const Point p = s.a + (s.b - s.a) * (static_cast<double>(i) / kSamples);
    if (locate(p, outline, kSamePlace) != Side::Boundary) return false;
  }
  return true;
}

void checkCreases(const Net& net, const FlatNet& flat, Problems& found) {
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    const Segment& line = flat.creases[i];
    const std::string& child = net.panels[static_cast<std::size_t>(crease.child)].id;
    const std::string& parent = net.panels[static_cast<std::size_t>(crease.parent)].id;
    if (!liesOnBoundary(line, flat.panels[static_cast<std::size_t>(crease.parent)]) ||
        !liesOnBoundary(line, flat.panels[static_cast<std::size_t>(crease.child)]))
      found.push_back({ProblemCode::CreaseOffPanel, child, {parent}});
    if (length(line) < kShortestCrease && crease.kind != CreaseKind::Flat)
      found.push_back({ProblemCode::CreaseTooShort, child, {Length::mm(length(line))}});
  }
}

void checkFlaps(const Net& net, double caliper, Problems& found) {
  for (const Mate& mate : net.mates) {
    const Panel& flap = net.panels[static_cast<std::size_t>(mate.panel)];
    const Crease* crease = net.creaseOf(mate.panel);
    if (crease == nullptr || crease->kind == CreaseKind::Flat || mate.method == Method::Rest)
      continue;
    const double depth = bounds(flap.outline).high.y;
    const double least = minimumFlapWidth(caliper);
    if (depth < least - kSamePlace)
      found.push_back(
          {ProblemCode::FlapTooNarrow, flap.id, {Length::mm(depth), Length::mm(least)}});
  }
}

}  // namespace

double minimumFlapWidth(double caliper) { return std::max(6.0, 10 * caliper); }

Problems findProblems(const Net& net, const FlatNet& flat, double caliper) {
  Problems found;
  checkNames(net, found);
  for (const Panel& panel : net.panels) {
    checkOutline(panel, found);
    if (!panel.openings.empty()) checkOpenings(panel, found);
  }
  checkOverlaps(net, flat, found);
  checkCreases(net, flat, found);
  checkFlaps(net, caliper, found);
  if (flat.outline.size() != 1)
    found.push_back(
        {ProblemCode::NetInPieces, {}, {static_cast<std::int64_t>(flat.outline.size())}});
  return found;
}

}  // namespace creasewright
