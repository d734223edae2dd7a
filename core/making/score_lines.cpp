#include "making/score_lines.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

Span spanOf(const Segment& s) { return {std::min(s.a.y, s.b.y), std::max(s.a.y, s.b.y)}; }

/// Flaps that vanish under glue may carry a score that is not theirs.
std::vector<bool> panelsThatMind(const Net& net) {
  std::vector<bool> minds(net.panels.size(), true);
  for (const Mate& mate : net.mates) {
    const auto panel = static_cast<std::size_t>(mate.panel);
    if (mate.method == Method::Glue && mate.patch.empty() && !net.panels[panel].shows)
      minds[panel] = false;
  }
  return minds;
}

ScoreLine& lineAt(std::vector<ScoreLine>& lines, double at) {
  const auto found = std::ranges::find_if(
      lines, [at](const ScoreLine& line) { return std::abs(line.at - at) <= kSameLine; });
  if (found != lines.end()) return *found;
  lines.push_back({at, {}, {}, false});
  return lines.back();
}

void addCreases(LineView& view, const Net& net, const FlatNet& flat) {
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    const Segment s{view.turn(flat.creases[i].a), view.turn(flat.creases[i].b)};
    if (!isUpright(s)) continue;
    if (!isScored(crease)) {
      if (view.minds[static_cast<std::size_t>(crease.parent)] ||
          view.minds[static_cast<std::size_t>(crease.child)])
        view.flats.push_back(s);
      continue;
    }
    ScoreLine& line = lineAt(view.lines, s.a.x);
    (crease.isValley() ? line.valleys : line.mountains).push_back(spanOf(s));
  }
}

void addCuts(LineView& view, const FlatNet& flat) {
  for (const Polyline& cut : cutLines(flat))
    for (std::size_t i = 0; i + 1 < cut.size(); ++i) {
      const Segment s{view.turn(cut[i]), view.turn(cut[i + 1])};
      if (isUpright(s)) view.cuts.push_back(s);
    }
}

LineView viewOf(const Net& net, const FlatNet& flat, bool swapped) {
  LineView view;
  view.swapped = swapped;
  view.width = swapped ? flat.height : flat.width;
  view.height = swapped ? flat.width : flat.height;
  view.minds = panelsThatMind(net);
  for (Polygon panel : flat.panels) {
    for (Point& p : panel) p = view.turn(p);
    view.panels.push_back(std::move(panel));
  }
  addCreases(view, net, flat);
  addCuts(view, flat);
  std::ranges::sort(view.lines, {}, &ScoreLine::at);
  for (ScoreLine& line : view.lines) {
    line.valleys = joined(std::move(line.valleys));
    line.mountains = joined(std::move(line.mountains));
    line.full = !line.isMixed() && !overlaps(view.blocked(line.at), 0, view.height);
  }
  return view;
}

}  // namespace

bool isScored(const Crease& crease) { return crease.kind != CreaseKind::Flat; }

bool isUpright(const Segment& s) {
  return std::abs(s.a.x - s.b.x) <= kSameLine && std::abs(s.a.y - s.b.y) > kSameLine;
}

std::vector<double> LineView::fullPositions() const {
  std::vector<double> positions;
  for (const ScoreLine& line : lines)
    if (line.full) positions.push_back(line.at);
  return positions;
}

std::vector<Span> LineView::blocked(double at) const {
  std::vector<Span> spans;
  for (std::size_t i = 0; i < panels.size(); ++i) {
    if (!minds[i]) continue;
    const std::vector<Span> inside = insideOf(panels[i], at);
    spans.insert(spans.end(), inside.begin(), inside.end());
  }
  for (const Segment& s : flats)
    if (std::abs(s.a.x - at) <= kSameLine) spans.push_back(spanOf(s));
  return joined(std::move(spans));
}

std::vector<Span> LineView::card(double at) const {
  std::vector<Span> spans;
  for (const Polygon& panel : panels) {
    const std::vector<Span> inside = insideOf(panel, at);
    spans.insert(spans.end(), inside.begin(), inside.end());
  }
  return joined(std::move(spans));
}

std::array<LineView, 2> lineViews(const Net& net, const FlatNet& flat) {
  return {viewOf(net, flat, false), viewOf(net, flat, true)};
}

}  // namespace creasewright
