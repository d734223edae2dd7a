#include "edits/pull.h"

#include <algorithm>
#include <cmath>

#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kProbe = 0.05;  // mm by which a measure is tried
constexpr double kMoves = 0.01;  // mm per mm: less is nothing

Parameters with(Parameters parameters, std::string_view key, std::int64_t raw) {
  parameters.setCount(key, raw);
  return parameters;
}

bool isOfProduct(const Style& style, const Design& design, std::string_view key) {
  if (!style.needs) return false;
  const Room room{};
  const std::vector<Need> needs = style.needs(room, design.parameters, benchOf(design));
  return std::ranges::find(needs, key, &Need::key) != needs.end();
}

/// The raw value nearest to `wanted` that the limits allow, going from one they allow; the limit.
std::pair<std::int64_t, std::optional<Problem>> allowed(const Style& style, const Design& design,
                                                        std::string_view key, std::int64_t from,
                                                        std::int64_t wanted) {
  const Workbench bench = benchOf(design);
  const auto problemAt = [&](std::int64_t raw) -> std::optional<Problem> {
    const Problems found = checkLimits(style, with(design.parameters, key, raw), bench);
    return found.empty() ? std::nullopt : std::optional(found.front());
  };
  const std::optional<Problem> limit = problemAt(wanted);
  if (!limit) return {wanted, std::nullopt};
  std::int64_t good = from;
  std::int64_t bad = wanted;
  while (std::abs(bad - good) > 1) {
    const std::int64_t middle = good + (bad - good) / 2;
    (problemAt(middle) ? bad : good) = middle;
  }
  return {good, limit};
}

}  // namespace

std::vector<PullWay> waysToPull(const Design& design, const Movable& thing) {
  const Result<const Style*> style = findStyle(design.styleId);
  std::vector<PullWay> ways;
  if (!style) return ways;
  const auto held = HeldThing::take(design, thing, Blanks::AsDrawn);
  if (!held) return ways;
  for (const ParameterSpec& spec : (*style)->parameters) {
    if (spec.kind != ParameterKind::Length) continue;
    if (design.ownStyle && !isSeen(*design.ownStyle, spec.key)) continue;
    const double now = design.parameters.mm(spec.key);
    for (const double by : {kProbe, -kProbe}) {
      const std::optional<double> gone = held->goneAt(spec.key, now + by);
      if (!gone) continue;
      if (std::abs(*gone / by) > kMoves)
        ways.push_back({spec.key, *gone / by, isOfProduct(**style, design, spec.key)});
      break;
    }
  }
  std::stable_sort(ways.begin(), ways.end(), [](const PullWay& a, const PullWay& b) {
    return std::abs(a.perMm) > std::abs(b.perMm) + 1e-6;
  });
  return ways;
}

std::optional<HeldThing> HeldThing::take(const Design& design, const Movable& thing,
                                         Blanks blanks) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return std::nullopt;
  auto gauge = gaugeOf(**style, design, thing, blanks);
  if (!gauge) return std::nullopt;
  return HeldThing(**style, design, std::move(*gauge));
}

HeldThing::HeldThing(const Style& style, const Design& design, Gauge gauge)
    : style_(&style),
      design_(design),
      gauge_(std::move(gauge)),
      start_(gauge_(design.parameters).value_or(0)) {}

std::optional<double> HeldThing::goneAt(std::string_view key, double mm) const {
  const std::int64_t nm = Length::mm(mm).nm();
  if (last_ && last_->key == key && last_->nm == nm) return last_->gone;
  const auto there = gauge_(with(design_.parameters, key, nm));
  last_ = Asked{std::string(key), nm, there ? std::optional(*there - start_) : std::nullopt};
  return last_->gone;
}

/// The value at which the thing has gone `by` mm, as near as it comes. It follows the measure in
/// proportion, or nearly so: some steps of the secant find it. On a grid it may follow in jumps,
/// where flaps give way to keep the blank on it: then the nearest place that was seen.
double HeldThing::valueFor(std::string_view key, double perMm, double by) const {
  constexpr int kSteps = 12;
  constexpr int kNoNearer = 3;  // so many steps that come no nearer are jumps
  double value = design_.parameters.mm(key);
  double gone = 0;
  double nearest = value;
  double missed = std::abs(by);
  int noNearer = 0;
  for (int i = 0; i < kSteps && noNearer < kNoNearer && missed > 1e-6; ++i) {
    const double next = value + (by - gone) / perMm;
    const std::optional<double> there = goneAt(key, next);
    // Beyond a limit, which is found where limits are; or the line is lost: then it stays.
    if (!there) return isLost(key, next) ? nearest : next;
    if (std::abs(*there - gone) > 1e-9) perMm = (*there - gone) / (next - value);
    value = next;
    gone = *there;
    ++noNearer;
    if (std::abs(by - gone) < missed) {
      missed = std::abs(by - gone);
      nearest = value;
      noNearer = 0;
    }
  }
  return nearest;
}

bool HeldThing::isLost(std::string_view key, double mm) const {
  const Parameters then = with(design_.parameters, key, Length::mm(mm).nm());
  return checkLimits(*style_, then, benchOf(design_)).empty();
}

Pulled HeldThing::pull(const PullWay& way, double byMm, bool offGrid) const {
  const std::string_view key = way.key;
  const std::int64_t from = design_.parameters.raw(key);
  Length wanted = Length::mm(valueFor(key, way.perMm, byMm));
  const ToolGrid grid = design_.grid;
  const bool onGrid = !offGrid && !grid.isNone();
  if (onGrid) wanted = grid.nearest(wanted);
  auto [raw, stopped] = allowed(*style_, design_, key, from, wanted.nm());
  Length reached = Length::nanometres(raw);
  if (stopped && onGrid) {
    // Onto the grid again, on the side that is allowed.
    const bool grew = raw > from;
    reached = grew ? grid.roundDown(reached) : grid.roundUp(reached);
    if (grew != (reached.nm() > from)) reached = Length::nanometres(from);
  }
  return {reached, goneAt(key, reached.mm()).value_or(0), std::move(stopped)};
}

Pulled pull(const Design& design, const Movable& thing, const PullWay& way, double byMm,
            bool offGrid) {
  const auto held = HeldThing::take(design, thing);
  if (!held) return {design.parameters.length(way.key), 0, std::nullopt};
  return held->pull(way, byMm, offGrid);
}

}  // namespace creasewright
