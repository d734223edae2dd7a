#include "styles/limits_search.h"

#include <algorithm>
#include <cstdlib>
#include <functional>
#include <limits>
#include <queue>
#include <set>
#include <vector>

namespace creasewright {
namespace {

constexpr std::int64_t kFarthest = 1'500'000'000;  // nm: no side is longer
constexpr std::int64_t kMostCount = 1'000;
constexpr int kMostTries = 400;  // states looked at before the search gives up

using Specs = std::span<const ParameterSpec>;

struct Range {
  std::int64_t low;
  std::int64_t high;
  [[nodiscard]] bool holds(std::int64_t value) const { return value >= low && value <= high; }
};

Range limitsOf(const ParameterSpec& spec, const Parameters& p, const Workbench& bench) {
  return {spec.minimum(p, bench), spec.maximum(p, bench)};
}

bool isInside(const ParameterSpec& spec, const Parameters& p, const Workbench& bench) {
  return limitsOf(spec, p, bench).holds(p.raw(spec.key));
}

/// The parameters outside their limits, by index, ascending.
using Outside = std::vector<std::size_t>;

Outside outsideOf(Specs specs, const Parameters& p, const Workbench& bench) {
  Outside outside;
  for (std::size_t i = 0; i < specs.size(); ++i)
    if (!isInside(specs[i], p, bench)) outside.push_back(i);
  return outside;
}

std::int64_t farthest(const ParameterSpec& spec) {
  return spec.kind == ParameterKind::Length ? kFarthest : kMostCount;
}

/// Values that limits can reckon with: just outside instead of far outside.
Parameters tamed(Specs specs, Parameters parameters) {
  for (const ParameterSpec& spec : specs)
    parameters.setCount(spec.key,
                        std::clamp<std::int64_t>(parameters.raw(spec.key), -1, farthest(spec) + 1));
  return parameters;
}

struct State {
  Parameters parameters;
  Outside outside;
  double cost = 0;

  /// The fewer parameters are outside, the nearer the end.
  [[nodiscard]] double hope() const { return cost + 2 * static_cast<double>(outside.size()); }
};

struct Worse {
  bool operator()(const State& a, const State& b) const { return a.hope() > b.hope(); }
};

class Search {
 public:
  Search(Specs specs, const Workbench& bench, const Floors& floors)
      : specs_(specs), making_(bench), floors_(floors) {}

  std::optional<Parameters> run(Parameters from) {
    from = tamed(specs_, std::move(from));
    start_ = from;
    push(std::move(from), 0);
    for (int tries = 0; !open_.empty() && tries < kMostTries; ++tries) {
      const State state = open_.top();
      open_.pop();
      if (state.outside.empty()) return state.parameters;
      expand(state);
    }
    return std::nullopt;
  }

 private:
  void push(Parameters parameters, double cost) {
    if (!seen_.insert({parameters.begin(), parameters.end()}).second) return;
    Outside outside = outsideOf(specs_, parameters, making_);
    open_.push({std::move(parameters), std::move(outside), cost});
  }

  /// One of those outside moves inside, or another one moves so that it is.
  void expand(const State& state) {
    for (const std::size_t first : state.outside)
      if (bringInside(state, first)) return;
  }

  /// Whether there is any way to.
  bool bringInside(const State& state, std::size_t first) {
    bool any = false;
    for (std::size_t i = 0; i < specs_.size(); ++i) {
      // What the product asks for is the last to move.
      const double own = (i == first ? 0 : 2) + (floors_.contains(specs_[i].key) ? 20 : 0);
      const auto inside = [&](const Parameters& now) {
        return isInside(specs_[first], now, making_);
      };
      const auto fewer = [&](const Parameters& now) { return inside(now) && addsNone(state, now); };
      std::optional<Parameters> moved = nearest(state.parameters, i, fewer);
      const double more = moved ? 0 : 1;
      if (!moved) moved = nearest(state.parameters, i, inside);
      if (!moved) continue;
      any = true;
      push(std::move(*moved), state.cost + 1 + own + more);
    }
    return any;
  }

  /// Whether none is outside that was not before.
  [[nodiscard]] bool addsNone(const State& state, const Parameters& now) const {
    auto known = state.outside.begin();
    for (std::size_t i = 0; i < specs_.size(); ++i)
      if (known != state.outside.end() && *known == i)
        ++known;
      else if (!isInside(specs_[i], now, making_))
        return false;
    return true;
  }

  using Test = std::function<bool(const Parameters&)>;

  /// Whether a value of parameter `i` passes; the others are those of `tried`, which keeps it.
  [[nodiscard]] bool passes(Parameters& tried, std::size_t i, std::int64_t value,
                            const Test& test) const {
    if (value < floorOf(i)) return false;
    tried.setCount(specs_[i].key, value);
    return test(tried);
  }

  /// Not below what the product asks for, unless the person went there.
  [[nodiscard]] std::int64_t floorOf(std::size_t i) const {
    const auto floor = floors_.find(specs_[i].key);
    if (floor == floors_.end()) return std::numeric_limits<std::int64_t>::min();
    return std::min(floor->second, start_.raw(specs_[i].key));
  }

  /// The nearest value of parameter `i` that passes, in either direction within its own limits.
  [[nodiscard]] std::optional<Parameters> nearest(const Parameters& p, std::size_t i,
                                                  const Test& test) const {
    const ParameterSpec& spec = specs_[i];
    Range own = limitsOf(spec, p, making_);
    own.low = std::max<std::int64_t>(own.low, -1);
    own.high = std::min(own.high, farthest(spec));
    if (own.low > own.high) return std::nullopt;
    std::optional<std::int64_t> best;
    const std::int64_t now = p.raw(spec.key);
    for (const int way : {1, -1})
      if (const auto value = firstOnTheWay(p, i, own, way, test))
        if (!best || std::abs(*value - now) < std::abs(*best - now)) best = value;
    if (!best || *best == now) return std::nullopt;
    Parameters moved = p;
    moved.setCount(spec.key, *best);
    return moved;
  }

  [[nodiscard]] std::optional<std::int64_t> firstOnTheWay(const Parameters& p, std::size_t i,
                                                          Range own, int way,
                                                          const Test& test) const {
    const std::int64_t from = std::clamp(p.raw(specs_[i].key), own.low, own.high);
    const std::int64_t end = way > 0 ? own.high : own.low;
    Parameters tried = p;
    if (specs_[i].kind != ParameterKind::Length) {
      for (std::int64_t value = from; (end - value) * way >= 0; value += way)
        if (passes(tried, i, value, test)) return value;
      return std::nullopt;
    }
    std::int64_t failed = from;
    std::int64_t passed = from;
    bool found = passes(tried, i, from, test);
    for (std::int64_t step = 100'000; !found && passed != end; step += step / 3) {
      failed = passed;
      passed = way > 0 ? std::min(from + step, end) : std::max(from - step, end);
      found = passes(tried, i, passed, test);
    }
    if (!found) return std::nullopt;
    while (std::abs(passed - failed) > 1) {
      const std::int64_t middle = failed + (passed - failed) / 2;
      (passes(tried, i, middle, test) ? passed : failed) = middle;
    }
    return rounded(p, i, passed, way, test);
  }

  /// Further the same way to the tool grid, or to what can be read.
  [[nodiscard]] std::int64_t rounded(const Parameters& p, std::size_t i, std::int64_t value,
                                     int way, const Test& test) const {
    Parameters tried = p;
    const bool up = p.raw(specs_[i].key) < value || (p.raw(specs_[i].key) == value && way > 0);
    for (const ToolGrid grid :
         {making_.grid, ToolGrid(Length::inches(1, 64)), ToolGrid(mm(0.01))}) {
      if (grid.isNone()) continue;
      const Length raw = Length::nanometres(value);
      const std::int64_t onGrid = (up ? grid.roundUp(raw) : grid.roundDown(raw)).nm();
      if (onGrid != p.raw(specs_[i].key) && passes(tried, i, onGrid, test)) return onGrid;
      if (making_.grid.isNone() || grid != making_.grid) continue;
      const std::int64_t back = (up ? grid.roundDown(raw) : grid.roundUp(raw)).nm();
      if (back != p.raw(specs_[i].key) && passes(tried, i, back, test)) return back;
    }
    return value;
  }

  Specs specs_;
  const Workbench& making_;
  const Floors& floors_;
  Parameters start_;
  std::priority_queue<State, std::vector<State>, Worse> open_;
  std::set<std::map<std::string, std::int64_t>> seen_;
};

/// The lengths of `parameters` times `factor`.
Parameters enlarged(Specs specs, Parameters parameters, std::int64_t factor) {
  for (const ParameterSpec& spec : specs)
    if (spec.kind == ParameterKind::Length)
      parameters.setCount(spec.key, std::min(kFarthest, spec.standard * factor));
  return parameters;
}

/// Gives back one after the other what need not have changed.
Parameters closer(Specs specs, Parameters found, const Parameters& wanted, const Workbench& bench) {
  for (const ParameterSpec& spec : specs) {
    Parameters tried = found;
    tried.setCount(spec.key, wanted.raw(spec.key));
    if (withinLimits(specs, tried, bench)) found = std::move(tried);
  }
  return found;
}

}  // namespace

bool withinLimits(Specs specs, const Parameters& parameters, const Workbench& bench) {
  // No limit reaches that far, and limits could not reckon with it.
  for (const ParameterSpec& spec : specs)
    if (std::abs(std::clamp(parameters.raw(spec.key), -2 * kFarthest, 2 * kFarthest)) > kFarthest)
      return false;
  return std::ranges::all_of(
      specs, [&](const ParameterSpec& spec) { return isInside(spec, parameters, bench); });
}

std::string_view firstOutside(Specs specs, const Parameters& parameters, const Workbench& bench) {
  const Outside outside = outsideOf(specs, tamed(specs, parameters), bench);
  return outside.empty() ? std::string_view() : specs[outside.front()].key;
}

std::optional<Parameters> movedWithinLimits(Specs specs, const Parameters& parameters,
                                            const Workbench& bench, const Floors& floors) {
  if (withinLimits(specs, parameters, bench)) return parameters;
  if (auto found = Search(specs, bench, floors).run(parameters))
    return closer(specs, std::move(*found), parameters, bench);
  // Far from everything: from the style's own measures, larger for thicker card.
  for (const std::int64_t factor : {1, 2, 4, 8}) {
    Parameters start = enlarged(specs, parameters, factor);
    for (const auto& [key, floor] : floors) start.setCount(key, std::max(start.raw(key), floor));
    if (auto found = Search(specs, bench, floors).run(start))
      return closer(specs, std::move(*found), parameters, bench);
  }
  return std::nullopt;
}

RawRange possibleRange(Specs specs, const Parameters& parameters, const Workbench& bench,
                       std::string_view key) {
  const auto spec = std::ranges::find(specs, key, &ParameterSpec::key);
  const std::int64_t now = parameters.raw(key);
  const Range own = limitsOf(*spec, parameters, bench);
  Parameters tried = parameters;
  const auto fits = [&](std::int64_t value) {
    tried.setCount(key, value);
    return withinLimits(specs, tried, bench);
  };
  const auto end = [&](std::int64_t limit) {
    std::int64_t inside = now;
    std::int64_t outside = limit;
    if (fits(limit)) return limit;
    while (std::abs(outside - inside) > 1) {
      const std::int64_t middle = inside + (outside - inside) / 2;
      (fits(middle) ? inside : outside) = middle;
    }
    return inside;
  };
  return {end(own.low), end(own.high)};
}

}  // namespace creasewright
