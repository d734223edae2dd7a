#include "edits/kinds/panel_site.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "edits/kinds/place_measures.h"
#include "geometry/apart.h"

namespace creasewright {
namespace {

constexpr double kClear = 1.5;      // mm of card that is left beside a cut; common practice, no
                                    // published source
constexpr double kHalfSlit = 0.01;  // mm

Point turned(Point p, int quarters) {
  for (int i = 0; i < quarters; ++i) p = turnLeft(p);
  return p;
}

/// A slit as a strip of no width to speak of.
Polygon strip(Point from, Point to) {
  const Point side = turnLeft(unit(to - from)) * kHalfSlit;
  return {from - side, to - side, to + side, from + side};
}

/// Whether a cut is far from the panel's edges and all that is cut out of it, farther than the
/// sharpest corner of an inset reaches: then nothing need be reckoned.
bool isPlainlyClear(const EditSite& site, const Polygon& cut) {
  constexpr double kFar = 4 * kClear + kHalfSlit;
  const Panel& panel = site.on();
  const auto isApart = [&](const Polygon& hole) { return plainlyOutside(cut, hole, kFar); };
  if (!plainlyInside(cut, panel.outline, kFar) || !std::ranges::all_of(panel.openings, isApart))
    return false;
  return std::ranges::all_of(site.net.slits, [&](const Slit& slit) {
    return slit.panel != site.panel || isApart(slit.line);
  });
}

}  // namespace

DrawnPanel::DrawnPanel(const Net& net, int panel) {
  double turn = 0;
  for (const Crease* crease = net.creaseOf(panel); crease != nullptr;
       crease = net.creaseOf(crease->parent)) {
    const Point along = crease->onParent.a - crease->onParent.b;
    turn += std::atan2(along.y, along.x) / (std::numbers::pi / 2);
  }
  quarters_ = ((static_cast<int>(std::lround(turn)) % 4) + 4) % 4;
  Polygon outline = net.panels[static_cast<std::size_t>(panel)].outline;
  for (Point& p : outline) p = drawn(p);
  box_ = bounds(outline);
}

Point DrawnPanel::drawn(Point own) const { return turned(own, quarters_); }
Point DrawnPanel::own(Point drawn) const { return turned(drawn, (4 - quarters_) % 4); }

Point placedMiddle(const EditSite& site, const DrawnPanel& panel, double width, double height) {
  const Parameters& m = site.measures;
  const auto along = [](std::int64_t from, double by, double low, double high, double size) {
    if (from == 1) return low + by + size / 2;
    if (from == 2) return high - by - size / 2;
    return (low + high) / 2 + by;
  };
  const Bounds& box = panel.box();
  return {along(m.count("x-from"), m.mm("x"), box.low.x, box.high.x, width),
          along(m.count("y-from"), m.mm("y"), box.low.y, box.high.y, height)};
}

void addPlace(std::vector<EditMeasure>& measures) {
  measures.push_back(editChoice(
      "x-from", worded("styles", "Across from"),
      worded("styles", "As the net is drawn on the sheet."),
      {worded("styles", "Middle"), worded("styles", "Left"), worded("styles", "Right")}));
  measures.push_back(editLength("x", worded("styles", "Across"),
                                worded("styles", "From the middle, or from that side."), "0 mm",
                                -mm(1000)));
  measures.push_back(editChoice(
      "y-from", worded("styles", "Up from"), worded("styles", "As the net is drawn on the sheet."),
      {worded("styles", "Middle"), worded("styles", "Bottom"), worded("styles", "Top")}));
  measures.push_back(editLength("y", worded("styles", "Up"),
                                worded("styles", "From the middle, or from that side."), "0 mm",
                                -mm(1000)));
}

bool liesOnCard(const EditSite& site, const Polygon& cut) {
  const Panel& panel = site.on();
  if (isPlainlyClear(site, cut)) return true;
  Region card = region(panel.outline);
  std::vector<Polygon> gone = panel.openings;
  for (Polygon& hole : gone) std::ranges::reverse(hole);
  for (const Slit& slit : site.net.slits)
    for (std::size_t i = 0; slit.panel == site.panel && i + 1 < slit.line.size(); ++i)
      gone.push_back(strip(slit.line[i], slit.line[i + 1]));
  if (!gone.empty()) card = subtract(card, unite(gone));
  return area(subtract(region(cut), offset(card, -kClear))) < 1e-4;
}

std::optional<ProblemCode> cutOpening(const EditSite& site, const Polygon& drawn) {
  const DrawnPanel panel(site.net, site.panel);
  const Bounds size = bounds(drawn);
  const Point middle = placedMiddle(site, panel, size.width(), size.height());
  Polygon opening;
  for (const Point& p : drawn) opening.push_back(panel.own(middle + p));
  if (!liesOnCard(site, opening)) return ProblemCode::EditUnfit;
  std::ranges::reverse(opening);
  site.on().openings.push_back(std::move(opening));
  return std::nullopt;
}

std::optional<ProblemCode> cutSlit(const EditSite& site, Point from, Point to) {
  const DrawnPanel panel(site.net, site.panel);
  const Point a = panel.own(from);
  const Point b = panel.own(to);
  if (!liesOnCard(site, strip(a, b))) return ProblemCode::EditUnfit;
  site.net.slits.push_back({site.panel, {a, b}});
  return std::nullopt;
}

}  // namespace creasewright
