#include "edits/pull_together.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "styles/registry.h"

namespace creasewright {
namespace {

constexpr double kStep = 0.05;     // mm by which a measure is tried
constexpr double kNearest = 1e-6;  // mm; no nearer is sought
constexpr double kMade = 1e-3;     // mm; who misses by less has come there

/// How far two things lie from where they shall be, mm; one thing alone has a second that is right.
using Miss = std::array<double, 2>;

double square(const Miss& miss) { return miss[0] * miss[0] + miss[1] * miss[1]; }

/// How far the things go for each mm of a measure.
using Column = std::array<double, 2>;

class Together {
 public:
  Together(const Style& style, const Design& design, const std::vector<Aim>& aims)
      : style_(style), design_(design), bench_(benchOf(design)), now_(design.parameters) {
    for (const Aim& aim : aims) {
      auto onGrid = gaugeOf(style, design, aim.thing, Blanks::OnGrid);
      auto asDrawn = gaugeOf(style, design, aim.thing, Blanks::AsDrawn);
      if (!onGrid || !asDrawn) continue;
      start_.push_back((*onGrid)(now_).value_or(0));
      by_.push_back(aim.byMm);
      gauges_.push_back(std::move(*onGrid));
      smooth_.push_back(std::move(*asDrawn));
    }
  }

  [[nodiscard]] bool holdsAll(std::size_t count) const { return gauges_.size() == count; }

  /// What is missed with these measures; nothing beyond a limit, or where a thing is lost.
  [[nodiscard]] std::optional<Miss> missAt(const Parameters& then) const {
    Miss miss{};
    for (std::size_t i = 0; i < gauges_.size(); ++i) {
      const auto there = gauges_[i](then);
      if (!there) return std::nullopt;
      miss[i] = by_[i] - (*there - start_[i]);
    }
    return miss;
  }

  /// All measures at once; then, where a limit or a bend of the style has held them up, each alone
  /// and all again.
  void solve(const std::vector<std::string_view>& keys) {
    constexpr int kTurns = 3;
    descend(keys);
    for (int turn = 0; turn < kTurns && least_ > kMade * kMade && keys.size() > 1; ++turn) {
      const double before = least_;
      for (const std::string_view key : keys) descend({key});
      descend(keys);
      if (least_ > before - kMade * kMade) break;
    }
    // A limit that the other measures have made up for has stopped nothing.
    if (least_ < kMade * kMade) stopped_.reset();
  }

  /// Each measure to a mark of the grid: the few that matter most up or down, whichever brings the
  /// things nearest together; the others to the nearest mark.
  void ontoGrid(const std::vector<std::string_view>& keys) {
    constexpr std::size_t kTried = 3;
    const ToolGrid grid = design_.grid;
    std::vector<std::string_view> changed;
    for (const std::string_view key : strongestFirst(keys))
      if (now_.raw(key) != design_.parameters.raw(key)) changed.push_back(key);
    const std::size_t tried = std::min(kTried, changed.size());
    Parameters rounded = now_;
    for (std::size_t i = tried; i < changed.size(); ++i)
      rounded.set(changed[i], grid.nearest(now_.length(changed[i])));
    std::optional<double> least;
    Parameters best = design_.parameters;
    for (std::size_t pattern = 0; pattern < (std::size_t{1} << tried); ++pattern) {
      Parameters then = rounded;
      for (std::size_t i = 0; i < tried; ++i) {
        const Length exact = now_.length(changed[i]);
        const bool up = (pattern >> i & 1) != 0;
        then.set(changed[i], up ? grid.roundUp(exact) : grid.roundDown(exact));
      }
      const auto miss = missAt(then);
      if (!miss || (least && square(*miss) >= *least)) continue;
      least = square(*miss);
      best = std::move(then);
    }
    now_ = best;
  }

  [[nodiscard]] PulledTogether result(const std::vector<std::string_view>& keys) const {
    PulledTogether pulled;
    for (const std::string_view key : keys) pulled.values.emplace_back(key, now_.length(key));
    const Miss miss = missAt(now_).value_or(Miss{});
    for (std::size_t i = 0; i < by_.size(); ++i) pulled.gone.push_back(by_[i] - miss[i]);
    pulled.stopped = stopped_;
    return pulled;
  }

 private:
  /// From where the measures are, with these free; keeps the best that is met.
  void descend(const std::vector<std::string_view>& keys) {
    free_ = keys;
    auto miss = missAt(now_);
    if (!miss) return;
    least_ = square(*miss);
    Parameters best = now_;
    const auto keep = [&] {
      if (!miss || square(*miss) >= least_) return;
      least_ = square(*miss);
      best = now_;
    };
    double damping = 1e-6;
    constexpr int kRounds = 12;
    std::vector<Column> columns = derivative();
    for (int round = 0; round < kRounds && miss && square(*miss) > kNearest * kNearest; ++round) {
      const std::vector<double> step = stepFor(columns, *miss, damping);
      const Parameters next = moved(step, 1);
      if (const Problems beyond = checkLimits(style_, next, bench_); !beyond.empty()) {
        stopped_ = beyond.front();
        const bool goesOn = goToLimit(step);
        miss = missAt(now_);
        keep();
        if (!goesOn) break;
      } else if (const auto there = missAt(next); there && square(*there) < square(*miss)) {
        const bool slow = square(*there) > square(*miss) / 100;
        now_ = next;
        miss = there;
        keep();
        damping = std::max(damping / 10, 1e-9);
        if (!slow) continue;
      } else {
        damping = std::max(damping * 100, 1e-2);  // shorter, and nearer to the steepest way
        continue;
      }
      columns = derivative();
    }
    now_ = best;
  }

  /// By each free measure, at the measures as they are now; on blanks as drawn, where a little
  /// change is not taken back by flaps that give way.
  [[nodiscard]] std::vector<Column> derivative() const {
    std::vector<double> here;
    for (const Gauge& gauge : smooth_) here.push_back(gauge(now_).value_or(0));
    std::vector<Column> columns;
    for (const std::string_view key : free_) columns.push_back(columnOf(key, here));
    return columns;
  }

  [[nodiscard]] Column columnOf(std::string_view key, const std::vector<double>& here) const {
    for (const double by : {kStep, -kStep}) {
      Parameters then = now_;
      then.set(key, now_.length(key) + Length::mm(by));
      Column column{};
      bool found = true;
      for (std::size_t i = 0; i < smooth_.size() && found; ++i) {
        const auto there = smooth_[i](then);
        found = there.has_value();
        if (found) column[i] = (*there - here[i]) / by;
      }
      if (found) return column;
    }
    return {};
  }

  /// Jt (J Jt + damping)^-1 miss: of all steps that take the things there, the smallest.
  static std::vector<double> stepFor(const std::vector<Column>& columns, const Miss& miss,
                                     double damping) {
    double a = 0;
    double b = 0;
    double d = 0;
    for (const Column& column : columns) {
      a += column[0] * column[0];
      b += column[0] * column[1];
      d += column[1] * column[1];
    }
    const double more = damping * std::max(a + d, 1e-12);
    a += more;
    d += more;
    const double determinant = a * d - b * b;
    std::vector<double> step;
    for (const Column& column : columns) {
      const double first = (d * miss[0] - b * miss[1]) / determinant;
      const double second = (a * miss[1] - b * miss[0]) / determinant;
      step.push_back(determinant > 0 ? column[0] * first + column[1] * second : 0);
    }
    return step;
  }

  /// The free measures a share of a step on; those held stay.
  [[nodiscard]] Parameters moved(const std::vector<double>& step, double share) const {
    Parameters then = now_;
    for (std::size_t i = 0; i < free_.size(); ++i)
      then.set(free_[i], now_.length(free_[i]) + Length::mm(step[i] * share));
    return then;
  }

  [[nodiscard]] bool isAllowed(const Parameters& then) const {
    return checkLimits(style_, then, bench_).empty();
  }

  /// As far along a step as the limits let all measures go; those that a limit keeps from going on
  /// are free no more. False when nothing is gained by going on.
  bool goToLimit(const std::vector<double>& step) {
    double good = 0;
    double bad = 1;
    for (int i = 0; i < 40; ++i) {
      const double middle = (good + bad) / 2;
      (isAllowed(moved(step, middle)) ? good : bad) = middle;
    }
    const Parameters reached = moved(step, good);
    if (!missAt(reached)) return false;  // a thing is lost on the way
    now_ = reached;
    std::vector<std::string_view> still;
    for (std::size_t i = 0; i < free_.size(); ++i) {
      Parameters alone = now_;
      alone.set(free_[i], now_.length(free_[i]) + Length::mm(step[i] * (1 - good)));
      if (isAllowed(alone)) still.push_back(free_[i]);
    }
    // Limits that only stop them together: one of them gives way.
    if (still.size() == free_.size()) still.pop_back();
    free_ = std::move(still);
    return !free_.empty();
  }

  [[nodiscard]] std::vector<std::string_view> strongestFirst(
      const std::vector<std::string_view>& keys) {
    free_ = keys;
    const std::vector<Column> columns = derivative();
    std::vector<std::pair<double, std::string_view>> order;
    for (std::size_t i = 0; i < keys.size(); ++i)
      order.emplace_back(std::hypot(columns[i][0], columns[i][1]), keys[i]);
    std::ranges::stable_sort(order, std::greater(), [](const auto& each) { return each.first; });
    std::vector<std::string_view> sorted(order.size());
    std::ranges::transform(order, sorted.begin(), [](const auto& each) { return each.second; });
    return sorted;
  }

  const Style& style_;
  const Design& design_;
  Workbench bench_;
  Parameters now_;
  std::vector<Gauge> gauges_;
  std::vector<Gauge> smooth_;
  std::vector<double> start_;
  std::vector<double> by_;
  std::vector<std::string_view> free_;  // measures that may still change
  double least_ = 0;                    // the square of what is missed
  std::optional<Problem> stopped_;
};

}  // namespace

PulledTogether pullTogether(const Design& design, const std::vector<Aim>& aims,
                            const std::vector<std::string_view>& keys, bool offGrid) {
  PulledTogether still;
  for (const std::string_view key : keys)
    still.values.emplace_back(key, design.parameters.length(key));
  still.gone.assign(aims.size(), 0);
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style || aims.empty() || aims.size() > Miss().size()) return still;
  Together together(**style, design, aims);
  if (!together.holdsAll(aims.size())) return still;
  together.solve(keys);
  if (!offGrid && !design.grid.isNone()) together.ontoGrid(keys);
  return together.result(keys);
}

}  // namespace creasewright
