#include "cutting/branch_proof.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <utility>

namespace creasewright {
namespace {

constexpr double kTinyCost = 1e-6;
constexpr double kStep = 25'000;  // of work, beside the pivots
constexpr double kWholeShortage = 1000;
constexpr std::size_t kDiveSteps = 200;
constexpr unsigned kDives = 40;
constexpr int kDeepest = 400;

/// How a tree is searched.
struct BranchSearch {
  unsigned seed = 0;  ///< 0 = for a proof; else of the corner to dive from
  std::size_t mostSteps = kDiveSteps;
};

/// The linear programme: fewest blanks, by area, that the sheets do not give. From a corner: with
/// prices of the columns that are too small to matter.
Programme shortage(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                   const std::vector<double>& areas, unsigned seed) {
  constexpr unsigned kPrices = 1000;
  std::minstd_rand random(seed);
  Programme p;
  for (const int demand : rows.demand) p.addRow(demand, Programme::kInfinite);
  for (const int sheets : rows.atHand) p.addRow(-Programme::kInfinite, sheets);
  const double all = std::inner_product(areas.begin(), areas.end(), rows.demand.begin(), 0.0);
  for (std::size_t d = 0; d < rows.demand.size(); ++d) {
    p.put(static_cast<int>(d), 1);
    p.addColumn(kWholeShortage * areas[d] / all, Programme::kInfinite);
  }
  for (const CoverColumn& column : columns) {
    for (std::size_t d = 0; d < rows.demand.size(); ++d)
      if (column.pattern.counts[d] > 0) p.put(static_cast<int>(d), column.pattern.counts[d]);
    p.put(static_cast<int>(rows.demand.size()) + column.stock, 1);
    p.addColumn(seed == 0 ? 0 : kTinyCost * static_cast<double>(random() % kPrices),
                Programme::kInfinite);
  }
  return p;
}

class Branching {
 public:
  Branching(const std::vector<CoverColumn>& columns, const CoverRows& rows,
            const std::vector<double>& areas, const BranchSearch& search, Work& work)
      : columns_(columns),
        rows_(rows),
        search_(search),
        work_(work),
        solver_(shortage(columns, rows, areas, search.seed)),
        least_(columns.size(), 0) {
    for (const CoverColumn& column : columns)
      most_.push_back(rows.atHand[static_cast<std::size_t>(column.stock)]);
  }

  Branched run() {
    Branched done;
    if (descend(0)) done.proof = std::move(steps_);
    done.times = std::move(cover_);
    return done;
  }

 private:
  /// Whether there is no cover within the limits; false as well when it was given up.
  bool descend(int depth) {
    if (steps_.size() >= search_.mostSteps || depth > kDeepest || !work_.add(kStep) ||
        !solver_.solve(work_))
      return false;
    const std::vector<double> all = solver_.times();
    const auto first = all.begin() + std::ssize(rows_.demand);
    if (std::accumulate(all.begin(), first, 0.0) > kTinyCost) return end();
    const std::vector<double> times(first, all.end());
    const std::size_t i = toBranchOn(times);
    if (i == times.size()) {
      for (const double t : times) cover_.push_back(static_cast<int>(std::lround(t)));
      return false;
    }
    const int whole = static_cast<int>(std::floor(times[i]));
    steps_.push_back({columns_[i].stock, columns_[i].pattern.counts, whole, {}});
    const bool up = search_.seed != 0;
    for (const bool more : {up, !up})
      if (!within(i, more ? whole + 1 : least_[i], more ? most_[i] : whole, depth)) return false;
    return true;
  }

  /// An end of the proof, where the programme's prices make one in whole numbers. A dive needs
  /// none.
  bool end() {
    std::vector<std::int64_t> worth;
    if (search_.seed == 0) worth = worths();
    if (search_.seed == 0 && !holdTooLittle(worth)) return false;
    steps_.push_back({-1, {}, 0, std::move(worth)});
    return true;
  }

  bool within(std::size_t i, int least, int most, int depth) {
    const int leastBefore = std::exchange(least_[i], least);
    const int mostBefore = std::exchange(most_[i], most);
    limit(i);
    const bool none = descend(depth + 1);
    least_[i] = leastBefore;
    most_[i] = mostBefore;
    limit(i);
    return none;
  }

  void limit(std::size_t i) {
    solver_.setColumn(static_cast<int>(rows_.demand.size() + i), least_[i], most_[i]);
  }

  /// The column that is farthest from whole; beyond the last when each is whole.
  [[nodiscard]] static std::size_t toBranchOn(const std::vector<double>& times) {
    std::size_t best = times.size();
    double most = kTinyCost;
    for (std::size_t i = 0; i < times.size(); ++i) {
      const double part = times[i] - std::floor(times[i]);
      const double far = std::min(part, 1 - part);
      if (far <= most) continue;
      most = far;
      best = i;
    }
    return best;
  }

  [[nodiscard]] std::vector<std::int64_t> worths() const {
    constexpr double kScale = 1 << 26;
    std::vector<double> prices = solver_.prices();
    prices.resize(rows_.demand.size());
    double dearest = kTinyCost * kTinyCost;
    for (const double price : prices) dearest = std::max(dearest, price);
    std::vector<std::int64_t> worth;
    for (const double price : prices)
      worth.push_back(
          static_cast<std::int64_t>(std::floor(std::max(0.0, price) / dearest * kScale)));
    return worth;
  }

  /// Whether by these worths the columns, within their limits, give less than is wanted.
  [[nodiscard]] bool holdTooLittle(const std::vector<std::int64_t>& worth) const {
    const auto worthOf = [&](const std::vector<int>& counts) {
      return std::inner_product(worth.begin(), worth.end(), counts.begin(), std::int64_t{0});
    };
    std::vector<std::pair<std::int64_t, std::size_t>> order;
    std::vector<int> left = rows_.atHand;
    std::int64_t held = 0;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      order.emplace_back(worthOf(columns_[i].pattern.counts), i);
      held += order.back().first * least_[i];
      left[static_cast<std::size_t>(columns_[i].stock)] -= least_[i];
    }
    if (std::ranges::any_of(left, [](int n) { return n < 0; })) return true;
    std::ranges::sort(order, std::ranges::greater());
    for (const auto& [each, i] : order) {
      int& rest = left[static_cast<std::size_t>(columns_[i].stock)];
      const int more = std::min(rest, most_[i] - least_[i]);
      held += each * more;
      rest -= more;
    }
    return held < worthOf(rows_.demand);
  }

  const std::vector<CoverColumn>& columns_;
  const CoverRows& rows_;
  BranchSearch search_;
  Work& work_;
  LinearSolver solver_;
  std::vector<int> least_;  // of each column
  std::vector<int> most_;
  std::vector<CountStep> steps_;
  std::vector<int> cover_;
};

}  // namespace

Branched branchOnColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         const std::vector<double>& areas, std::size_t mostSteps, Work& work) {
  return Branching(columns, rows, areas, {0, mostSteps}, work).run();
}

std::vector<int> diveOnColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                               const std::vector<double>& areas, Work& work) {
  std::vector<int> times;
  for (unsigned seed = 1; seed <= kDives && times.empty() && work.mayGoOn(); ++seed)
    times = Branching(columns, rows, areas, {seed, kDiveSteps}, work).run().times;
  return times;
}

}  // namespace creasewright
