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

/// A thing in the hand.
class Pulling {
 public:
  Pulling(const Style& style, const Design& design, const Movable& thing, Blanks blanks)
      : style_(style), design_(design), gauge_(gaugeOf(style, design, thing, blanks)) {
    if (gauge_) start_ = (*gauge_)(design.parameters).value_or(0);
  }

  [[nodiscard]] bool isThere() const { return gauge_.has_value(); }

  /// How far the thing lies from where it was, for a value of a measure (mm). Nothing beyond a
  /// limit, or where it is another one.
  [[nodiscard]] std::optional<double> goneAt(std::string_view key, double mm) const {
    const auto there = (*gauge_)(with(design_.parameters, key, Length::mm(mm).nm()));
    return there ? std::optional(*there - start_) : std::nullopt;
  }

  /// The value at which the thing has gone `by` mm, as near as it comes. It follows the measure in
  /// proportion, or nearly so: some steps of the secant find it. On a grid it may follow in jumps,
  /// where flaps give way to keep the blank on it: then the nearest place that was seen.
  [[nodiscard]] double valueFor(std::string_view key, double perMm, double by) const {
    constexpr int kSteps = 12;
    double value = design_.parameters.mm(key);
    double gone = 0;
    double nearest = value;
    double missed = std::abs(by);
    for (int i = 0; i < kSteps && missed > 1e-6; ++i) {
      const double next = value + (by - gone) / perMm;
      const std::optional<double> there = goneAt(key, next);
      // Beyond a limit, which is found where limits are; or the line is lost: then it stays.
      if (!there) return isLost(key, next) ? nearest : next;
      if (std::abs(*there - gone) > 1e-9) perMm = (*there - gone) / (next - value);
      value = next;
      gone = *there;
      if (std::abs(by - gone) < missed) {
        missed = std::abs(by - gone);
        nearest = value;
      }
    }
    return nearest;
  }

 private:
  [[nodiscard]] bool isLost(std::string_view key, double mm) const {
    const Parameters then = with(design_.parameters, key, Length::mm(mm).nm());
    return checkLimits(style_, then, benchOf(design_)).empty();
  }

  const Style& style_;
  const Design& design_;
  std::optional<Gauge> gauge_;
  double start_ = 0;
};

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
  const Pulling pulling(**style, design, thing, Blanks::AsDrawn);
  if (!pulling.isThere()) return ways;
  for (const ParameterSpec& spec : (*style)->parameters) {
    if (spec.kind != ParameterKind::Length) continue;
    if (design.ownStyle && !isSeen(*design.ownStyle, spec.key)) continue;
    const double now = design.parameters.mm(spec.key);
    for (const double by : {kProbe, -kProbe}) {
      const std::optional<double> gone = pulling.goneAt(spec.key, now + by);
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

Pulled pull(const Design& design, const Movable& thing, const PullWay& way, double byMm,
            bool offGrid) {
  const std::string_view key = way.key;
  const std::int64_t from = design.parameters.raw(key);
  Pulled still{Length::nanometres(from), 0, std::nullopt};
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return still;
  const Pulling pulling(**style, design, thing, Blanks::OnGrid);
  if (!pulling.isThere()) return still;
  Length wanted = Length::mm(pulling.valueFor(key, way.perMm, byMm));
  const bool onGrid = !offGrid && !design.grid.isNone();
  if (onGrid) wanted = design.grid.nearest(wanted);
  auto [raw, stopped] = allowed(**style, design, key, from, wanted.nm());
  Length reached = Length::nanometres(raw);
  if (stopped && onGrid) {
    // Onto the grid again, on the side that is allowed.
    const bool grew = raw > from;
    reached = grew ? design.grid.roundDown(reached) : design.grid.roundUp(reached);
    if (grew != (reached.nm() > from)) reached = Length::nanometres(from);
  }
  return {reached, pulling.goneAt(key, reached.mm()).value_or(0), std::move(stopped)};
}

}  // namespace creasewright
