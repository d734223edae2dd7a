#include "cutting/prove_bound.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>
#include <optional>
#include <set>

#include "cutting/count_steps.h"
#include "cutting/plain_sheet.h"

namespace creasewright {
namespace {

constexpr double kNode = 500;       // steps
constexpr int kMostSheets = 1'000;  // the search is as deep as there are sheets

using Counts = std::vector<int>;

/// Worths, what each kind of sheet holds at most of them, and what is wanted in all.
struct Weighing {
  std::vector<std::int64_t> worth;
  std::vector<std::int64_t> most;
  std::int64_t wanted = 0;
};

class Bound {
 public:
  Bound(const std::vector<CutSheet>& stock, const std::vector<BlankDemand>& demands, bool priced,
        Work& work)
      : stock_(stock), demands_(demands), work_(work) {
    for (const CutSheet& sheet : stock) {
      if (work.mayGoOn()) sheets_.emplace_back(sheet, demands, work);
      cost_.push_back(priced ? sheet.cost : 1);
    }
    weighings_.push_back(byArea());
  }

  /// Weighs with the worths of a proof; with worths that cannot be weighed nothing is done.
  void weigh(const WorthProof& proof) {
    if (proof.worth.size() != demands_.size() || !work_.mayGoOn()) return;
    if (std::ranges::count(weighings_, proof.worth, &Weighing::worth) > 0) return;
    Weighing weighing{proof.worth, {}, 0};
    for (std::size_t d = 0; d < demands_.size(); ++d) {
      if (proof.worth[d] < 0 || proof.worth[d] > kMostWorth) return;
      weighing.wanted += proof.worth[d] * demands_[d].quantity;
    }
    for (const PlainSheet& sheet : sheets_) {
      const std::optional<std::int64_t> most = sheet.most(proof.worth, work_);
      if (!most) return;
      weighing.most.push_back(*most);
    }
    weighings_.push_back(std::move(weighing));
  }

  /// Lists all that fits each sheet, and weighs again: no blank counts more often than it is
  /// wanted.
  bool list() {
    if (!work_.mayGoOn()) return false;
    std::vector<std::vector<Counts>> lists;
    for (const PlainSheet& sheet : sheets_) {
      std::optional<std::vector<Counts>> all = sheet.allCounts(work_);
      if (!all) return false;
      lists.push_back(*std::move(all));
    }
    lists_ = std::move(lists);
    for (Weighing& weighing : weighings_)
      for (std::size_t s = 0; s < lists_.size(); ++s) {
        std::int64_t most = 0;
        for (const Counts& counts : lists_[s]) most = std::max(most, worthOf(counts, weighing));
        weighing.most[s] = std::min(weighing.most[s], most);
      }
    return true;
  }

  /// Lists what may lie on so many sheets, or on fewer, that hold all together: on none of them
  /// less than it can hold by more than all can hold beyond what is wanted. To be asked before
  /// list(), which weighs other than such a floor wants.
  bool listNear(const Counts& counts) {
    lists_.clear();
    const Weighing* tight = tightest(counts);
    if (tight == nullptr || slackOf(counts, *tight) < 0) return false;
    const WorkShare share(work_, work_.left() / 3);
    const PlainSheet::Floor floor{tight->worth, slackOf(counts, *tight)};
    for (std::size_t s = 0; s < sheets_.size(); ++s) {
      std::optional<std::vector<Counts>> near = std::vector<Counts>();
      if (counts[s] > 0) near = sheets_[s].allCounts(work_, &floor);
      if (!near) return false;
      std::erase_if(*near, [&](const Counts& fits) {
        return std::ranges::any_of(weighings_, [&](const Weighing& weighing) {
          return weighing.most[s] - worthOf(fits, weighing) > slackOf(counts, weighing);
        });
      });
      lists_.push_back(*std::move(near));
    }
    return true;
  }

  /// Whether one of the proofs shows that there is no plan with so many sheets; they are ruled out.
  bool ruleOutBySteps(const Counts& counts, const std::vector<CountProof>& proofs) {
    const auto atLeast = [&](const CountProof& proof) {
      return proof.sheets.size() == counts.size() &&
             std::equal(counts.begin(), counts.end(), proof.sheets.begin(), std::less_equal());
    };
    const auto proof = std::ranges::find_if(proofs, atLeast);
    if (proof == proofs.end() || proof->steps.empty()) return false;
    for (const WorthProof& worths : proof->spare) weigh(worths);
    Counts demand;
    for (const BlankDemand& d : demands_) demand.push_back(d.quantity);
    if (!listNear(proof->sheets) || !stepsHold(*proof, lists_, demand, work_)) return false;
    tooFew_.push_back(proof->sheets);
    return true;
  }

  /// The numbers of sheets that cost least, less than `below`, and are not ruled out. Nothing when
  /// there are none; no numbers when the work did not do.
  std::optional<Counts> cheapest(std::int64_t below) {
    const WorkShare share(work_, work_.left() / 3);
    least_ = below;
    found_.reset();
    Counts counts(stock_.size(), 0);
    choose(0, 0, counts);
    if (!work_.mayGoOn()) return Counts();
    return found_;
  }

  /// What follows from the weighings without trying numbers: worths divided by what the dearest
  /// sheet holds are prices (Farley, Oper. Res. 38, 1990); of a kind that is limited each may hold
  /// more than it costs, for that much. Rounded down a little before it is rounded up.
  [[nodiscard]] std::int64_t byPrices() const {
    constexpr long double kTrace = 1e-6L;
    long double best = 0;
    for (const Weighing& weighing : weighings_)
      for (std::size_t t = 0; t < stock_.size(); ++t) {
        if (weighing.most[t] <= 0) continue;
        const long double price = static_cast<long double>(cost_[t]) / weighing.most[t];
        long double bound = price * weighing.wanted;
        for (std::size_t s = 0; s < stock_.size(); ++s) {
          const long double loss = cost_[s] - price * weighing.most[s];
          if (loss >= -1e-12L * cost_[s]) continue;
          bound = stock_[s].atHand < 0 ? 0 : bound + stock_[s].atHand * loss;
          if (bound <= 0) break;
        }
        best = std::max(best, bound);
      }
    return static_cast<std::int64_t>(std::ceil(best - kTrace));
  }

  [[nodiscard]] std::int64_t costOf(const Counts& counts) const {
    std::int64_t sum = 0;
    for (std::size_t s = 0; s < counts.size(); ++s) sum += counts[s] * cost_[s];
    return sum;
  }

  /// Whether no choice of all patterns gives the blanks from so many sheets; then these numbers and
  /// all below them are ruled out. Of very many sheets it is not tried.
  bool ruleOut(const Counts& counts) {
    if (std::accumulate(counts.begin(), counts.end(), 0) > kMostSheets) return false;
    Counts rest;
    for (const BlankDemand& demand : demands_) rest.push_back(demand.quantity);
    dead_.clear();
    if (!suffice(rest, counts) && work_.mayGoOn()) {
      tooFew_.push_back(counts);
      return true;
    }
    return false;
  }

 private:
  static constexpr std::int64_t kMostWorth = std::int64_t{1} << 40;

  /// What so many sheets hold by a weighing beyond what is wanted.
  static std::int64_t slackOf(const Counts& counts, const Weighing& weighing) {
    std::int64_t held = 0;
    for (std::size_t s = 0; s < counts.size(); ++s) held += counts[s] * weighing.most[s];
    return held - weighing.wanted;
  }

  /// The weighing by which so many sheets hold least beyond what is wanted.
  [[nodiscard]] const Weighing* tightest(const Counts& counts) const {
    const Weighing* tight = nullptr;
    double best = 0;
    for (const Weighing& weighing : weighings_) {
      const auto wanted = static_cast<double>(weighing.wanted);
      const double share =
          wanted / std::max(1.0, wanted + static_cast<double>(slackOf(counts, weighing)));
      if (share <= best) continue;
      best = share;
      tight = &weighing;
    }
    return tight;
  }

  /// Areas, rounded so that blanks are rather too small and sheets too large.
  [[nodiscard]] Weighing byArea() const {
    constexpr double kUnit = 1e-3;  // mm2
    Weighing weighing;
    for (const BlankDemand& d : demands_) {
      weighing.worth.push_back(
          static_cast<std::int64_t>(d.width.mm() * d.height.mm() / kUnit * (1 - 1e-12)));
      weighing.wanted += weighing.worth.back() * d.quantity;
    }
    for (const CutSheet& s : stock_)
      weighing.most.push_back(
          static_cast<std::int64_t>(s.width.mm() * s.height.mm() / kUnit * (1 + 1e-12)) + 1);
    return weighing;
  }

  static std::int64_t worthOf(const Counts& counts, const Weighing& weighing) {
    std::int64_t sum = 0;
    for (std::size_t d = 0; d < counts.size(); ++d) sum += counts[d] * weighing.worth[d];
    return sum;
  }

  [[nodiscard]] bool ruledOut(const Counts& counts) const {
    for (const Weighing& weighing : weighings_) {
      std::int64_t held = 0;
      for (std::size_t s = 0; s < counts.size(); ++s) held += counts[s] * weighing.most[s];
      if (held < weighing.wanted) return true;
    }
    return std::ranges::any_of(tooFew_, [&](const Counts& few) {
      return std::equal(counts.begin(), counts.end(), few.begin(), std::less_equal());
    });
  }

  /// The fewest sheets of the last kind beside the others for which the weighings leave room.
  [[nodiscard]] std::int64_t neededOfLast(const Counts& counts) const {
    const std::size_t last = counts.size() - 1;
    std::int64_t needed = 0;
    for (const Weighing& weighing : weighings_) {
      std::int64_t open = weighing.wanted;
      for (std::size_t s = 0; s < last; ++s) open -= counts[s] * weighing.most[s];
      if (open <= 0) continue;
      if (weighing.most[last] <= 0) return -1;
      needed = std::max(needed, (open + weighing.most[last] - 1) / weighing.most[last]);
    }
    return needed;
  }

  /// Whether the sheets chosen, and kinds from `k` on for what may still be spent, are worth too
  /// little by some weighing.
  [[nodiscard]] bool tooDear(std::size_t k, std::int64_t spent, const Counts& counts) const {
    const auto open = static_cast<double>(least_ - 1 - spent);
    for (const Weighing& weighing : weighings_) {
      double held = 0;
      double best = 0;
      for (std::size_t s = 0; s < k; ++s)
        held += static_cast<double>(counts[s]) * static_cast<double>(weighing.most[s]);
      for (std::size_t s = k; s < counts.size(); ++s)
        best =
            std::max(best, static_cast<double>(weighing.most[s]) / static_cast<double>(cost_[s]));
      if ((held + best * open) * (1 + 1e-9) < static_cast<double>(weighing.wanted)) return true;
    }
    return false;
  }

  void choose(std::size_t k, std::int64_t spent, Counts& counts) {
    if (!work_.add(20.0 * static_cast<double>(weighings_.size()))) return;
    if (spent >= least_ || tooDear(k, spent, counts)) return;
    std::int64_t most = (least_ - 1 - spent) / cost_[k];
    if (stock_[k].atHand >= 0) most = std::min<std::int64_t>(most, stock_[k].atHand);
    if (k + 1 < counts.size()) {
      for (std::int64_t n = 0; n <= most; ++n) {
        counts[k] = static_cast<int>(n);
        choose(k + 1, spent + n * cost_[k], counts);
      }
      counts[k] = 0;
      return;
    }
    const std::int64_t needed = neededOfLast(counts);
    for (std::int64_t n = needed; needed >= 0 && n <= most; ++n) {
      counts[k] = static_cast<int>(n);
      if (ruledOut(counts)) continue;
      least_ = spent + n * cost_[k];
      found_ = counts;
      break;
    }
    counts[k] = 0;
  }

  /// Whether sheets are left that may give what is open, tried pattern by pattern. True as well
  /// when the work did not do.
  bool suffice(const Counts& rest, const Counts& left) {
    const auto open = std::ranges::find_if(rest, [](int n) { return n > 0; });
    if (open == rest.end() || !work_.add(kNode)) return true;
    if (std::ranges::any_of(weighings_, [&](const Weighing& weighing) {
          std::int64_t held = 0;
          for (std::size_t s = 0; s < left.size(); ++s) held += left[s] * weighing.most[s];
          return held < worthOf(rest, weighing);
        }))
      return false;
    Counts key = rest;
    key.insert(key.end(), left.begin(), left.end());
    if (dead_.contains(key)) return false;
    const std::size_t d = largestOpen(rest);
    std::set<std::pair<std::size_t, Counts>> tried;
    for (std::size_t s = 0; s < left.size(); ++s) {
      if (left[s] == 0) continue;
      Counts fewer = left;
      --fewer[s];
      for (const Counts& pattern : lists_[s]) {
        if (pattern[d] == 0) continue;
        Counts after = rest;
        for (std::size_t i = 0; i < after.size(); ++i)
          after[i] = std::max(0, after[i] - pattern[i]);
        if (!tried.emplace(s, after).second) continue;
        if (suffice(after, fewer)) return true;
      }
    }
    dead_.insert(std::move(key));
    return false;
  }

  [[nodiscard]] std::size_t largestOpen(const Counts& rest) const {
    std::size_t largest = rest.size();
    for (std::size_t d = 0; d < rest.size(); ++d)
      if (rest[d] > 0 && (largest == rest.size() ||
                          weighings_.front().worth[d] > weighings_.front().worth[largest]))
        largest = d;
    return largest;
  }

  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  Work& work_;
  std::vector<PlainSheet> sheets_;
  std::vector<std::int64_t> cost_;
  std::vector<Weighing> weighings_;  // the first is by area
  std::vector<std::vector<Counts>> lists_;
  std::vector<Counts> tooFew_;
  std::set<Counts> dead_;
  std::int64_t least_ = 0;
  std::optional<Counts> found_;
};

}  // namespace

std::int64_t recomputeBound(const std::vector<CutSheet>& stock,
                            const std::vector<BlankDemand>& demands, bool priced,
                            const BoundProof& proof, std::int64_t cost, Work& work) {
  Bound bound(stock, demands, priced, work);
  for (const WorthProof& worths : proof.worths) bound.weigh(worths);
  std::int64_t least = std::min(cost, bound.byPrices());
  const auto look = [&] {
    const std::optional<Counts> counts = bound.cheapest(cost);
    if (!counts) least = cost;
    if (counts && !counts->empty()) least = std::max(least, bound.costOf(*counts));
    return counts && !counts->empty() ? *counts : Counts();
  };
  Counts counts = look();
  while (!counts.empty() && (bound.ruleOutBySteps(counts, proof.counts) ||
                             (bound.listNear(counts) && bound.ruleOut(counts))))
    counts = look();
  if (least >= cost || !bound.list()) return least;
  least = std::max(least, std::min(cost, bound.byPrices()));
  for (counts = look(); !counts.empty() && bound.ruleOut(counts);) counts = look();
  return least;
}

}  // namespace creasewright
