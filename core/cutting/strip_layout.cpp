#include "cutting/strip_layout.h"

#include <algorithm>
#include <numeric>

#include "cutting/cut_tree.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr std::size_t kAllOrders = 5;   // kinds whose every order is tried
constexpr std::size_t kMostTurned = 8;  // kinds that are tried turned and not
constexpr double kTurning = 20'000;     // steps, by kinds
constexpr std::size_t kBuilt = 6;       // of the best by rough count, to be compared exactly

/// Blanks of one demand as they lie in a strip.
struct LyingBlanks {
  int demand = 0;
  Length along;   ///< in the strip's direction
  Length across;  ///< its width takes up the strip's
  bool turned = false;
  int count = 0;
};

/// How many of which kind lie in a strip, in this order.
struct Strip {
  Length across;
  std::vector<std::pair<std::size_t, int>> runs;
  bool operator==(const Strip&) const = default;
};

/// One way to cut a sheet into strips.
struct Way {
  bool upright = false;  ///< the strips, else they lie level
  std::vector<LyingBlanks> kinds;
  std::vector<Strip> strips;
  int settings = 0;  ///< rough count
};

/// The strip that the first kind with blanks left begins.
Strip nextStrip(const std::vector<LyingBlanks>& kinds, Length room, bool mixed,
                std::vector<int>& left) {
  Strip strip;
  for (std::size_t k = 0; k < kinds.size(); ++k) {
    if (left[k] == 0) continue;
    const bool first = strip.runs.empty();
    if (first) strip.across = kinds[k].across;
    if (!first && (!mixed || kinds[k].across > strip.across)) continue;
    const auto fit = static_cast<int>(room.nm() / kinds[k].along.nm());
    const int taken = std::min(left[k], fit);
    if (taken == 0) continue;
    strip.runs.emplace_back(k, taken);
    left[k] -= taken;
    room -= kinds[k].along * taken;
  }
  return strip;
}

/// A setting for every kind of strip, for each run in it, and where a blank is trimmed across.
int settingsOf(const Way& way) {
  int settings = 0;
  for (std::size_t s = 0; s < way.strips.size(); ++s) {
    const Strip& strip = way.strips[s];
    if (s > 0 && strip == way.strips[s - 1]) continue;
    ++settings;
    for (const auto& [kind, count] : strip.runs)
      settings += way.kinds[kind].across < strip.across ? 2 : 1;
  }
  return settings;
}

std::optional<Way> wayFor(std::vector<LyingBlanks> kinds, Length length, Length width, bool upright,
                          bool mixed) {
  std::vector<int> left;
  for (const LyingBlanks& kind : kinds) left.push_back(kind.count);
  Way way{upright, std::move(kinds), {}, 0};
  Length used;
  while (std::ranges::any_of(left, [](int n) { return n > 0; })) {
    Strip strip = nextStrip(way.kinds, length, mixed, left);
    if (strip.runs.empty()) return std::nullopt;
    used += strip.across;
    if (used > width) return std::nullopt;
    way.strips.push_back(std::move(strip));
  }
  way.settings = settingsOf(way);
  return way;
}

CutNode stripNode(const CutNode& frame, const Way& way, const Strip& strip) {
  CutNode whole = frame;
  CutNode* rest = &whole;
  for (const auto& [index, count] : strip.runs)
    for (int i = 0; i < count; ++i) {
      const LyingBlanks& kind = way.kinds[index];
      const Length side = way.upright ? rest->height : rest->width;
      const bool last = kind.along == side;
      CutNode part = *rest;
      if (!last) {
        *rest = cutAt(*rest, !way.upright, kind.along);
        part = rest->parts[0];
      }
      const Length width = way.upright ? kind.across : kind.along;
      const Length height = way.upright ? kind.along : kind.across;
      (last ? *rest : rest->parts[0]) = blankIn(part, width, height, kind.demand, kind.turned);
      if (!last) rest = &rest->parts[1];
    }
  return whole;
}

CutNode sheetNode(const Way& way, Length width, Length height) {
  CutNode whole;
  whole.width = width;
  whole.height = height;
  CutNode* rest = &whole;
  for (const Strip& strip : way.strips) {
    const Length side = way.upright ? rest->width : rest->height;
    if (strip.across == side) {
      *rest = stripNode(*rest, way, strip);
      return tidied(whole);
    }
    *rest = cutAt(*rest, way.upright, strip.across);
    rest->parts[0] = stripNode(rest->parts[0], way, strip);
    rest = &rest->parts[1];
  }
  return tidied(whole);
}

/// All orders of few kinds; of many those by their sides.
std::vector<std::vector<LyingBlanks>> ordersOf(std::vector<LyingBlanks> kinds) {
  std::vector<std::vector<LyingBlanks>> orders;
  const auto across = [](const LyingBlanks& kind) { return kind.across; };
  const auto along = [](const LyingBlanks& kind) { return kind.along; };
  if (kinds.size() > kAllOrders) {
    std::ranges::stable_sort(kinds, std::ranges::greater(), along);
    orders.push_back(kinds);
    std::ranges::stable_sort(kinds, std::ranges::greater(), across);
    orders.push_back(std::move(kinds));
    return orders;
  }
  const auto byDemand = [](const LyingBlanks& a, const LyingBlanks& b) {
    return a.demand < b.demand;
  };
  std::ranges::sort(kinds, byDemand);
  do orders.push_back(kinds);
  while (std::next_permutation(kinds.begin(), kinds.end(), byDemand));
  return orders;
}

class StripWays {
 public:
  StripWays(Length width, Length height, const std::vector<BlankDemand>& demands,
            const std::vector<int>& counts, Work& work)
      : width_(width), height_(height), demands_(demands), counts_(counts), work_(work) {
    for (std::size_t d = 0; d < counts.size(); ++d)
      if (counts[d] > 0) used_.push_back(d);
  }

  std::vector<Way> best() {
    const std::size_t turning = std::min(used_.size(), kMostTurned);
    for (unsigned turned = 0; turned < 1U << turning; ++turned) {
      if (!mayTurn(turned)) continue;
      if (!work_.add(kTurning * static_cast<double>(used_.size()))) break;
      for (const bool upright : {false, true})
        for (const std::vector<LyingBlanks>& order : ordersOf(kindsFor(turned, upright)))
          for (const bool mixed : {false, true})
            keep(wayFor(order, upright ? height_ : width_, upright ? width_ : height_, upright,
                        mixed));
    }
    return std::move(ways_);
  }

 private:
  [[nodiscard]] bool mayTurn(unsigned turned) const {
    for (std::size_t k = 0; k < used_.size() && k < kMostTurned; ++k)
      if ((turned >> k & 1U) != 0 && !demands_[used_[k]].mayTurn) return false;
    return true;
  }

  [[nodiscard]] std::vector<LyingBlanks> kindsFor(unsigned turned, bool upright) const {
    std::vector<LyingBlanks> kinds;
    for (std::size_t k = 0; k < used_.size(); ++k) {
      const BlankDemand& demand = demands_[used_[k]];
      const bool turn = k < kMostTurned && (turned >> k & 1U) != 0;
      const Length width = turn ? demand.height : demand.width;
      const Length height = turn ? demand.width : demand.height;
      kinds.push_back({static_cast<int>(used_[k]), upright ? height : width,
                       upright ? width : height, turn, counts_[used_[k]]});
    }
    return kinds;
  }

  void keep(std::optional<Way> way) {
    if (!way) return;
    const auto place = std::ranges::upper_bound(ways_, way->settings, {}, &Way::settings);
    ways_.insert(place, std::move(*way));
    if (ways_.size() > kBuilt) ways_.pop_back();
  }

  Length width_;
  Length height_;
  const std::vector<BlankDemand>& demands_;
  const std::vector<int>& counts_;
  Work& work_;
  std::vector<std::size_t> used_;  // demands that occur
  std::vector<Way> ways_;          // the best so far, fewest settings first
};

}  // namespace

std::optional<CutNode> stripLayout(Length width, Length height,
                                   const std::vector<BlankDemand>& demands,
                                   const std::vector<int>& counts, Work& work) {
  std::optional<CutNode> best;
  for (const Way& way : StripWays(width, height, demands, counts, work).best()) {
    CutNode sheet = sheetNode(way, width, height);
    if (!best || trimmingWork(sheet) < trimmingWork(*best)) best = std::move(sheet);
  }
  return best;
}

}  // namespace creasewright
