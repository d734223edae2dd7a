#include "making/score_choice.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <map>
#include <optional>
#include <tuple>

namespace creasewright {
namespace {

/// Sums up settings of the board: those off the grid, all, their readings in nm.
using Cost = std::tuple<int, int, std::int64_t>;

Cost sum(const Cost& a, const Cost& b) {
  return {std::get<0>(a) + std::get<0>(b), std::get<1>(a) + std::get<1>(b),
          std::get<2>(a) + std::get<2>(b)};
}

/// The settings that the scores of a sheet can be read at. Each score needs one of its two: chosen
/// settings cover the scores as vertices cover the edges of a graph.
class Settings {
 public:
  Settings(const std::vector<SideReadings>& scores, ToolGrid grid) {
    for (const SideReadings& score : scores) {
      values_.push_back(score.fromLow);
      values_.push_back(score.fromHigh);
    }
    std::ranges::sort(values_);
    const auto same = [](Length a, Length b) { return (b - a).nm() <= kSameReading; };
    values_.erase(std::unique(values_.begin(), values_.end(), same), values_.end());
    for (const Length value : values_) costs_.push_back({grid.holds(value) ? 0 : 1, 1, value.nm()});
  }
  [[nodiscard]] std::size_t count() const { return values_.size(); }
  [[nodiscard]] const Cost& cost(std::size_t setting) const { return costs_[setting]; }
  [[nodiscard]] std::size_t of(Length reading) const {
    const auto next = std::ranges::upper_bound(values_, reading);
    return static_cast<std::size_t>(next - values_.begin()) - 1;
  }

 private:
  std::vector<Length> values_;  // ascending
  std::vector<Cost> costs_;
};

/// One of two settings must be chosen; equal ones leave no choice.
struct Either {
  std::size_t a;
  std::size_t b;
  bool operator==(const Either&) const = default;
};

/// The cheapest settings of which each pair has one. A setting meets at most one other through each
/// direction of the sheet, so pairs form chains and rings: taken along these, what is still open
/// after some of them comes in very few shapes, which are remembered.
class Cover {
 public:
  Cover(const Settings& settings, const std::vector<Either>& pairs) : settings_(settings) {
    for (const Either& pair : pairs)
      if (std::ranges::find(pairs_, pair) == pairs_.end()) pairs_.push_back(pair);
    putInChains();
  }

  Cost cost() { return best(std::vector<bool>(pairs_.size(), true)); }

  /// By setting.
  std::vector<bool> chosen() {
    std::vector<bool> chosen(settings_.count(), false);
    std::vector<bool> open(pairs_.size(), true);
    for (auto first = std::ranges::find(open, true); first != open.end();
         first = std::ranges::find(open, true)) {
      const Either& pair = pairs_[static_cast<std::size_t>(first - open.begin())];
      const bool takeA = with(pair.a, open) <= with(pair.b, open);
      const std::size_t taken = takeA ? pair.a : pair.b;
      chosen[taken] = true;
      open = without(taken, open);
    }
    return chosen;
  }

 private:
  /// Chains from end to end, then rings.
  void putInChains() {
    const auto meet = [](const Either& s, const Either& t) {
      return s.a == t.a || s.a == t.b || s.b == t.a || s.b == t.b;
    };
    std::vector<Either> rest = pairs_;
    const auto isEnd = [&](const Either& pair) {
      return std::ranges::count_if(rest, [&](const Either& p) { return meet(pair, p); }) <= 2;
    };
    pairs_.clear();
    while (!rest.empty()) {
      auto next = rest.end();
      if (!pairs_.empty())
        next = std::ranges::find_if(rest, [&](const Either& p) { return meet(p, pairs_.back()); });
      if (next == rest.end()) next = std::ranges::find_if(rest, isEnd);
      if (next == rest.end()) next = rest.begin();
      pairs_.push_back(*next);
      rest.erase(next);
    }
  }

  [[nodiscard]] std::vector<bool> without(std::size_t setting, std::vector<bool> open) const {
    for (std::size_t i = 0; i < pairs_.size(); ++i)
      if (pairs_[i].a == setting || pairs_[i].b == setting) open[i] = false;
    return open;
  }

  Cost with(std::size_t setting, const std::vector<bool>& open) {
    return sum(settings_.cost(setting), best(without(setting, open)));
  }

  Cost best(const std::vector<bool>& open) {
    const auto first = std::ranges::find(open, true);
    if (first == open.end()) return {};
    if (const auto known = known_.find(open); known != known_.end()) return known->second;
    const Either pair = pairs_[static_cast<std::size_t>(first - open.begin())];
    const Cost cost = std::min(with(pair.a, open), with(pair.b, open));
    return known_.emplace(open, cost).first->second;
  }

  const Settings& settings_;
  std::vector<Either> pairs_;
  std::map<std::vector<bool>, Cost> known_;
};

/// Sides of a sheet that are worked from: left, right, bottom, top.
struct Sides {
  unsigned set = 0;
  [[nodiscard]] bool low(bool level) const { return (set >> (level ? 2U : 0U) & 1U) != 0; }
  [[nodiscard]] bool high(bool level) const { return (set >> (level ? 3U : 1U) & 1U) != 0; }
  [[nodiscard]] int count() const { return __builtin_popcount(set); }
  [[nodiscard]] int highCount() const { return __builtin_popcount(set & 0b1010U); }
};

/// Where a score can be read when only some sides are used.
struct Allowed {
  bool low = false;
  bool high = false;
};

Allowed allowedFor(const SideReadings& score, Sides sides, Length board) {
  const bool any = board == Length();
  const bool lowFits = any || score.fromLow <= board;
  const bool highFits = any || score.fromHigh <= board;
  const bool neither = !lowFits && !highFits;
  return {sides.low(score.level) && (lowFits || neither),
          sides.high(score.level) && (highFits || neither)};
}

/// What must be chosen from when only these sides are used; nothing when a score is out of reach.
std::optional<std::vector<Either>> pairsFor(const std::vector<SideReadings>& scores,
                                            const Settings& settings, Sides sides, Length board) {
  std::vector<Either> pairs;
  for (const SideReadings& score : scores) {
    const Allowed allowed = allowedFor(score, sides, board);
    if (!allowed.low && !allowed.high) return std::nullopt;
    const std::size_t low = settings.of(score.fromLow);
    const std::size_t high = settings.of(score.fromHigh);
    const std::size_t a = allowed.low ? low : high;
    const std::size_t b = allowed.high ? high : low;
    pairs.push_back({std::min(a, b), std::max(a, b)});
  }
  return pairs;
}

}  // namespace

std::vector<bool> chooseReadings(const std::vector<SideReadings>& scores, ToolGrid grid,
                                 Length board) {
  const Settings settings(scores, grid);
  using Total = std::tuple<int, int, int, int, std::int64_t>;
  std::optional<Total> least;
  std::vector<bool> best(scores.size(), false);
  for (unsigned set = 0; set < 16; ++set) {
    const Sides sides{set};
    const auto pairs = pairsFor(scores, settings, sides, board);
    if (!pairs) continue;
    Cover cover(settings, *pairs);
    const auto [offGrid, count, length] = cover.cost();
    const Total total{offGrid, count, sides.count(), sides.highCount(), length};
    if (least && *least <= total) continue;
    least = total;
    const std::vector<bool> chosen = cover.chosen();
    for (std::size_t i = 0; i < scores.size(); ++i) {
      const Allowed allowed = allowedFor(scores[i], sides, board);
      const bool low = allowed.low && chosen[settings.of(scores[i].fromLow)];
      const bool high = allowed.high && chosen[settings.of(scores[i].fromHigh)];
      best[i] = high && (!low || scores[i].fromHigh < scores[i].fromLow);
    }
  }
  return best;
}

}  // namespace creasewright
