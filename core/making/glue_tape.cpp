#include "making/glue_tape.h"

#include <algorithm>
#include <array>
#include <optional>

#include "making/spans.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

/// An area turned so that its longest edge is upright, at x = 0, and the area at x >= 0.
struct Upright {
  Point origin;
  Point along;
  Polygon outline;

  explicit Upright(const Polygon& area) {
    double longest = 0;
    for (std::size_t i = 0; i < area.size(); ++i) {
      const Segment edge{area[i], area[(i + 1) % area.size()]};
      if (length(edge) <= longest) continue;
      longest = length(edge);
      origin = edge.a;
      along = unit(edge.b - edge.a);
    }
    for (const Point& p : area)
      outline.push_back({dot(turnLeft(along), p - origin), dot(along, p - origin)});
  }
  [[nodiscard]] Point back(Point p) const { return origin + turnLeft(along) * p.x + along * p.y; }
};

/// The longest stretch over which the strip `low`..`high` lies inside the area.
Span inside(const Polygon& area, double low, double high) {
  constexpr double kWithin = 0.02;  // mm, more than insideOf counts as on an edge
  std::vector<double> lines{low + kWithin, (low + high) / 2, high - kWithin};
  for (const Point& p : area)
    for (const double at : {p.x - kWithin, p.x + kWithin})
      if (at > low + kWithin && at < high - kWithin) lines.push_back(at);
  std::vector<Span> spans = insideOf(area, lines.front());
  for (const double at : lines) spans = common(spans, insideOf(area, at));
  if (spans.empty()) return {};
  return *std::ranges::max_element(spans, {}, &Span::length);
}

std::optional<Segment> fit(const Upright& area, double width) {
  const Bounds box = bounds(area.outline);
  if (box.width() < width - 1e-6) return std::nullopt;
  std::optional<Segment> best;
  for (const double middle : {(box.low.x + box.high.x) / 2, width / 2, box.low.x + width / 2}) {
    const Span span = inside(area.outline, middle - width / 2, middle + width / 2);
    if (span.length() < width || (best && span.length() <= length(*best) + 1e-6)) continue;
    best = Segment{area.back({middle, span.low}), area.back({middle, span.high})};
  }
  return best;
}

/// Where liquid glue goes: the longest line inside the area along its longest edge, in the middle
/// where that is as good.
Segment bead(const Upright& area) {
  const Bounds box = bounds(area.outline);
  Segment best{area.back({0, box.low.y}), area.back({0, box.high.y})};
  double longest = 0;
  for (const double share : {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9}) {
    const double x = box.low.x + share * box.width();
    for (const Span& span : insideOf(area.outline, x)) {
      if (span.length() <= 1.02 * longest) continue;
      longest = span.length();
      best = {area.back({x, span.low}), area.back({x, span.high})};
    }
  }
  return best;
}

std::array<Length, 4> tapeWidths(ToolGrid grid) {
  const bool inch = grid.step().nm() > 0 && 25'400'000 % grid.step().nm() == 0;
  if (inch)
    return {Length::inches(1, 2), Length::inches(3, 8), Length::inches(1, 4), Length::inches(1, 8)};
  return {mm(12), mm(9), mm(6), mm(3)};
}

GlueStrip stripFor(const Polygon& area, const std::array<Length, 4>& widths) {
  const Upright upright(area);
  GlueStrip strip;
  for (const Length width : widths) {
    const std::optional<Segment> middle = fit(upright, width.mm());
    if (!middle) continue;
    strip.width = width;
    strip.middle = *middle;
    return strip;
  }
  strip.middle = bead(upright);
  return strip;
}

/// The first stage in which a glued mate of these two panels closes.
int stageOf(const Net& net, const FoldPlan& folds, const GlueArea& area) {
  for (std::size_t i = 0; i < folds.stages.size(); ++i)
    for (const int index : folds.stages[i].mates) {
      const Mate& mate = net.mates[static_cast<std::size_t>(index)];
      if (mate.method == Method::Glue && mate.panel == area.panel && mate.onto == area.onto)
        return static_cast<int>(i) + 1;
    }
  return 0;
}

void countStrip(const GlueStrip& strip, AdhesivePlan& plan) {
  if (strip.liquid()) {
    ++plan.liquidSpots;
    return;
  }
  auto use = std::ranges::find(plan.tapes, strip.width, &TapeUse::width);
  if (use == plan.tapes.end()) use = plan.tapes.insert(use, {strip.width, Length(), 0});
  use->length += Length::mm(length(strip.middle));
  ++use->strips;
}

}  // namespace

AdhesivePlan planAdhesive(const Net& net, const std::vector<GlueArea>& areas, const FoldPlan& folds,
                          ToolGrid grid) {
  const std::array<Length, 4> widths = tapeWidths(grid);
  AdhesivePlan plan;
  for (std::size_t i = 0; i < areas.size(); ++i) {
    GlueStrip strip = stripFor(areas[i].area, widths);
    strip.area = static_cast<int>(i);
    strip.stage = stageOf(net, folds, areas[i]);
    countStrip(strip, plan);
    plan.strips.push_back(strip);
  }
  std::ranges::sort(plan.tapes, {}, &TapeUse::width);
  return plan;
}

}  // namespace creasewright
