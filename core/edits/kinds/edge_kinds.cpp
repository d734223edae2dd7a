#include <algorithm>
#include <cmath>
#include <numbers>

#include "edits/kinds/edge_site.h"
#include "edits/kinds/kinds.h"
#include "edits/kinds/place_measures.h"

namespace creasewright {
namespace {

constexpr double kSame = 1e-6;  // mm
constexpr double kHalfTurn = std::numbers::pi;
constexpr int kCurveSteps = 16;  // corners of one bow

/// The corners of a notch round (0, 0), from its left end on the edge to its right one, y inwards.
Polyline notchRun(std::int64_t shape, double width, double depth) {
  const double half = width / 2;
  if (shape == 1) return {{-half, 0}, {0, depth}, {half, 0}};
  if (shape == 2) return {{-half, 0}, {-half, depth}, {half, depth}, {half, 0}};
  Polyline run;
  for (int i = 0; i <= 2 * kCurveSteps; ++i) {
    const double t = kHalfTurn * i / (2 * kCurveSteps);
    run.push_back({-half * std::cos(t), depth * std::sin(t)});
  }
  return run;
}

std::optional<ProblemCode> applyNotch(const EditSite& site) {
  const std::optional<EdgeSite> edge = findEdge(site.net, site.panel, site.edge);
  if (!edge) return ProblemCode::EditPlaceGone;
  const Parameters& m = site.measures;
  const double width = m.mm("width");
  const double by = m.mm("x");
  double middle = edge->length() / 2 + (edge->turned ? -by : by);
  if (const auto from = m.count("x-from"); from != 0) {
    const double near = by + width / 2;
    middle = (from == 1) != edge->turned ? near : edge->length() - near;
  }
  if (middle - width / 2 < kSame || middle + width / 2 > edge->length() - kSame)
    return ProblemCode::EditUnfit;
  Polyline run = notchRun(m.count("shape"), width, m.mm("depth"));
  for (Point& p : run) p = edge->a + edge->along() * (middle + p.x) + edge->inwards() * p.y;
  replaceEdge(site.on(), *edge, run, "-notch", true);
  return std::nullopt;
}

/// Cuts the corner at the end of one edge and the start of the next, `size` mm along both; the
/// corner's index.
bool cutCorner(Panel& panel, std::size_t at, double size, bool round) {
  const std::size_t corners = panel.outline.size();
  const Point corner = panel.outline[at];
  const Point into = corner - panel.outline[(at + corners - 1) % corners];
  const Point out = panel.outline[(at + 1) % corners] - corner;
  if (norm(into) < size - kSame || norm(out) < size - kSame) return false;
  const Point from = corner - unit(into) * size;
  const double turn = std::atan2(cross(into, out), dot(into, out));
  if (turn < 0.1) return false;  // no corner that stands out
  Polyline run{from};
  if (round) {
    const double radius = size / std::tan(turn / 2);
    for (const Point& p : arc(from, from + turnLeft(unit(into)) * radius, turn * 180 / kHalfTurn))
      run.push_back(p);
  } else {
    run.push_back(corner + unit(out) * size);
  }
  const std::string name = panel.edges[at] + "-corner";
  const auto place = static_cast<std::ptrdiff_t>(at);
  panel.outline.erase(panel.outline.begin() + place);
  panel.outline.insert(panel.outline.begin() + place, run.begin(), run.end());
  panel.edges.insert(panel.edges.begin() + place, run.size() - 1, name);
  return true;
}

/// Takes out corners that fell together where a whole edge was cut away.
void tidy(Panel& panel) {
  for (std::size_t i = 0; i < panel.outline.size() && panel.outline.size() > 3;) {
    if (distance(panel.outline[i], panel.outline[(i + 1) % panel.outline.size()]) > kSame) {
      ++i;
      continue;
    }
    panel.outline.erase(panel.outline.begin() + static_cast<std::ptrdiff_t>(i));
    panel.edges.erase(panel.edges.begin() + static_cast<std::ptrdiff_t>(i));
  }
}

std::optional<ProblemCode> applyCorners(const EditSite& site) {
  const std::optional<EdgeSite> edge = findEdge(site.net, site.panel, site.edge);
  if (!edge) return ProblemCode::EditPlaceGone;
  const Parameters& m = site.measures;
  const bool round = m.count("shape") == 0;
  const auto ends = m.count("ends");
  const bool first = ends == 0 || (ends == 1) != edge->turned;
  const bool last = ends == 0 || (ends == 2) != edge->turned;
  Panel& panel = site.on();
  // The later corner first: the other's index then stays.
  const std::size_t end = (edge->index + 1) % panel.outline.size();
  const bool endLater = end > edge->index;
  if (last && endLater && !cutCorner(panel, end, m.mm("size"), round))
    return ProblemCode::EditUnfit;
  if (first && !cutCorner(panel, edge->index, m.mm("size"), round)) return ProblemCode::EditUnfit;
  if (last && !endLater && !cutCorner(panel, 0, m.mm("size"), round)) return ProblemCode::EditUnfit;
  tidy(panel);
  return std::nullopt;
}

/// How far a shaped edge lies inwards, as a share of its depth, `t` from 0 to 1 along it.
double shareInwards(std::int64_t shape, double t, double count) {
  const double turn = t * count;
  switch (shape) {
    case 1:  // wave
      return (1 - std::cos(2 * kHalfTurn * turn)) / 2;
    case 2:  // scallop: bows outwards
      return 1 - std::abs(std::sin(kHalfTurn * turn));
    case 3:  // one arch
      return 1 - std::sin(kHalfTurn * t);
    case 4:  // zigzag
      return 1 - std::abs(2 * (turn - std::floor(turn)) - 1);
    default:  // straight
      return 1;
  }
}

std::vector<double> stepsAlong(std::int64_t shape, std::int64_t count) {
  std::int64_t steps = count * kCurveSteps;
  if (shape == 0) steps = 1;
  if (shape == 3) steps = std::int64_t{2} * kCurveSteps;
  if (shape == 4) steps = 2 * count;
  std::vector<double> along;
  for (std::int64_t i = 0; i <= steps; ++i)
    along.push_back(static_cast<double>(i) / static_cast<double>(steps));
  return along;
}

std::optional<ProblemCode> applyShape(const EditSite& site) {
  const std::optional<EdgeSite> edge = findEdge(site.net, site.panel, site.edge);
  if (!edge) return ProblemCode::EditPlaceGone;
  const Parameters& m = site.measures;
  const double depth = m.mm("depth");
  const Point in = edge->inwards();
  const Point left = edge->before - edge->a;
  const Point right = edge->after - edge->b;
  if (dot(left, in) < depth + kSame || dot(right, in) < depth + kSame)
    return ProblemCode::EditUnfit;
  const auto shape = m.count("shape");
  Polyline run;
  for (const double t : stepsAlong(shape, m.count("count"))) {
    const double y = depth * shareInwards(shape, t, static_cast<double>(m.count("count")));
    const Point a = edge->a + left * (y / dot(left, in));
    const Point b = edge->b + right * (y / dot(right, in));
    run.push_back(a + (b - a) * t);
  }
  Panel& panel = site.on();
  panel.outline[edge->index] = run.front();
  panel.outline[(edge->index + 1) % panel.outline.size()] = run.back();
  run.erase(run.begin());
  run.pop_back();
  // All of it keeps the edge's name: what the style says of that edge still holds.
  replaceEdge(panel, *edge, run, {}, false);
  return std::nullopt;
}

EditMeasure endsMeasure(std::string_view key, Worded title, Worded first) {
  return editChoice(key, title,
                    worded("styles", "As the net is drawn; bottom and top of an upright edge."),
                    {first, worded("styles", "Left"), worded("styles", "Right")});
}

}  // namespace

EditKind notchEdit() {
  return {"notch",
          worded("styles", "Thumb notch"),
          worded("styles", "A piece cut out of a cut edge, to take hold of what is behind it."),
          EditPlace::Edge,
          {editChoice(
               "shape", worded("styles", "Shape"), worded("styles", "Of the notch."),
               {worded("styles", "Half-round"), worded("styles", "V"), worded("styles", "Square")}),
           editLength("width", worded("styles", "Width"), worded("styles", "Along the edge."),
                      "edge-length / 3", mm(2)),
           editLength("depth", worded("styles", "Depth"), worded("styles", "Into the card."),
                      "this-width / 2", mm(1)),
           endsMeasure("x-from", worded("styles", "From"), worded("styles", "Middle")),
           editLength("x", worded("styles", "Along"),
                      worded("styles", "From the middle, or from that end."), "0 mm", -mm(1000))},
          applyNotch};
}

EditKind cornersEdit() {
  return {"corners",
          worded("styles", "Corners"),
          worded("styles", "The corners at the ends of a cut edge, rounded or cut off."),
          EditPlace::Edge,
          {editChoice("shape", worded("styles", "Shape"), worded("styles", "Of the corners."),
                      {worded("styles", "Round"), worded("styles", "Cut")}),
           editLength("size", worded("styles", "Size"),
                      worded("styles", "Along both edges of the corner."), "5 mm", mm(1)),
           endsMeasure("ends", worded("styles", "Ends"), worded("styles", "Both"))},
          applyCorners};
}

EditKind shapedEdgeEdit() {
  return {
      "edge",
      worded("styles", "Shaped edge"),
      worded("styles", "A cut edge drawn in straight, as a wave, a scallop, an arch or a zigzag."),
      EditPlace::Edge,
      {editChoice(
           "shape", worded("styles", "Shape"), worded("styles", "Of the edge."),
           {worded("styles", "Straight"), worded("styles", "Wave"), worded("styles", "Scallop"),
            worded("styles", "Arch"), worded("styles", "Zigzag")}),
       editLength("depth", worded("styles", "Depth"), worded("styles", "Into the card."), "4 mm",
                  mm(0.5)),
       editCount("count", worded("styles", "Number"), worded("styles", "Of waves or bows."), "5", 1,
                 50)},
      applyShape};
}

}  // namespace creasewright
