#include "kits/plan_cutting.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <numeric>
#include <random>

#include "kits/all_patterns.h"
#include "kits/cover.h"
#include "kits/cut_tree.h"
#include "kits/fill_offcuts.h"
#include "kits/neat_layout.h"
#include "kits/trim_steps.h"
#include "units/paper.h"

namespace creasewright {
namespace {

constexpr double kTiny = 1e-7;
constexpr std::size_t kMostColumnsToSimplify = 120;
constexpr std::size_t kFewSizes = 10;
constexpr double kLeap = 1.3;  // in area, from one blank to the next smaller one
constexpr std::size_t kMostLeaps = 3;
constexpr std::size_t kSomeSizes = 16;
constexpr std::int64_t kNear = 50;  // of many sizes a plan this part above the bound is near enough

using Clock = std::chrono::steady_clock;

std::int64_t roundedUp(double cost) { return static_cast<std::int64_t>(std::ceil(cost - 1e-6)); }

class Planner {
 public:
  /// `part`: the demands are a part of those of another planner.
  Planner(const std::vector<StockSheet>& stock, const std::vector<BlankDemand>& demands,
          const PlanOptions& options, bool part = false)
      : stock_(stock), demands_(demands), options_(options), part_(part), start_(Clock::now()) {
    priced_ = std::ranges::all_of(stock, [](const StockSheet& s) { return s.price > 0; });
    for (const StockSheet& s : stock) rows_.atHand.push_back(s.atHand);
    for (const BlankDemand& d : demands) rows_.demand.push_back(d.quantity);
    findUnit();
  }

  Result<CuttingPlan> plan() {
    bound_ = areaBound();
    if (demands_.size() <= kFewSizes && listAll({})) return finishedBest();
    addFirstColumns();
    const LinearCover linear = generate(rows_, true);
    if (!linear.covered) return Problem{ProblemCode::StockTooFew, {}, {}};
    if (!exact_) boundCoarsely(linear);
    roundWithResiduals(linear);
    const std::int64_t near = demands_.size() <= kSomeSizes ? 0 : bound_ / kNear;
    if (!best_.found || best_.cost > bound_ + near) planBySize();
    improve(linear);
    if (best_.cost > bound_ && mayGoOn()) listNear(linear);
    if (!best_.found) return Problem{ProblemCode::StockTooFew, {}, {}};
    return finishedBest();
  }

 private:
  [[nodiscard]] double spent() const {
    return std::chrono::duration<double>(Clock::now() - start_).count();
  }
  [[nodiscard]] bool mayGoOn() const {
    if (spent() > options_.seconds) return false;
    return !options_.goOn || options_.goOn({best_.found ? best_.cost : 0, bound_});
  }
  [[nodiscard]] std::int64_t costOf(std::size_t s) const { return priced_ ? stock_[s].price : 1; }

  /// The greatest common divisor of all lengths keeps the numbers small.
  void findUnit() {
    unit_ = 0;
    for (const StockSheet& s : stock_)
      unit_ = std::gcd(unit_, std::gcd(s.width.nm(), s.height.nm()));
    for (const BlankDemand& d : demands_)
      unit_ = std::gcd(unit_, std::gcd(d.width.nm(), d.height.nm()));
    unit_ = std::max<std::int64_t>(unit_, 1);
  }

  /// What the blanks' area alone costs on the sheet that is cheapest by area.
  [[nodiscard]] std::int64_t areaBound() const {
    double area = 0;
    for (const BlankDemand& d : demands_) area += d.width.mm() * d.height.mm() * d.quantity;
    double cheapest = 0;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      const double price =
          static_cast<double>(costOf(s)) / (stock_[s].width.mm() * stock_[s].height.mm());
      if (s == 0 || price < cheapest) cheapest = price;
    }
    return roundedUp(area * cheapest);
  }

  [[nodiscard]] bool fits(std::size_t s, std::size_t d) const {
    const bool straight =
        demands_[d].width <= stock_[s].width && demands_[d].height <= stock_[s].height;
    const bool turned = demands_[d].mayTurn && demands_[d].width <= stock_[s].height &&
                        demands_[d].height <= stock_[s].width;
    return straight || turned;
  }

  [[nodiscard]] std::vector<KnapsackItem> items(const std::vector<int>& demand) const {
    std::vector<KnapsackItem> all;
    for (std::size_t d = 0; d < demands_.size(); ++d)
      all.push_back({demands_[d].width.nm() / unit_, demands_[d].height.nm() / unit_,
                     demands_[d].mayTurn, std::max(demand[d], 0)});
    return all;
  }

  SheetKnapsack knapsack(std::size_t s, const std::vector<int>& demand) const {
    return {stock_[s].width.nm() / unit_, stock_[s].height.nm() / unit_, items(demand)};
  }

  /// Each blank alone on each sheet that holds it.
  void addFirstColumns() {
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      SheetKnapsack sheet = knapsack(s, rows_.demand);
      for (std::size_t d = 0; d < demands_.size(); ++d) {
        if (!fits(s, d)) continue;
        std::vector<double> value(demands_.size(), 0);
        value[d] = 1;
        addColumn(s, sheet.best(value));
      }
    }
  }

  /// All patterns there are, and a whole-number cover over them. True when a plan is then proven
  /// best; else only a better plan may come of it, or nothing where there are too many.
  bool listAll(const ListingLimits& limits, const WorthFloor& floor = {}) {
    std::vector<CoverColumn> all;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      auto patterns = allPatterns(stock_[s].width.nm() / unit_, stock_[s].height.nm() / unit_,
                                  items(rows_.demand), limits, floor);
      if (!patterns) return false;
      for (Pattern& pattern : *patterns)
        all.push_back({static_cast<int>(s), costOf(s), std::move(pattern)});
    }
    const LinearCover linear = solveLinear(all, rows_);
    if (!linear.covered) return false;
    if (floor.worth.empty()) bound_ = std::max(bound_, roundedUp(linear.cost));
    const WholeCover found =
        solveWhole(all, rows_, std::max(0.1, (options_.seconds - spent()) * 0.8));
    if (floor.worth.empty() && found.found && found.best) bound_ = std::max(bound_, found.cost);
    if (found.found && (!best_.found || found.cost < best_.cost)) {
      best_ = found;
      columns_ = std::move(all);
      keepUseful(linear);
    }
    return best_.found && best_.cost <= bound_;
  }

  /// A plan at the bound wastes no more than the bound is above the linear cover, so it is cut only
  /// by patterns that waste no more: these are listed, first those that waste hardly anything.
  void listNear(const LinearCover& linear) {
    if (std::ranges::any_of(rows_.atHand, [](int n) { return n >= 0; })) return;
    const double slack = std::max(0.0, static_cast<double>(bound_) - linear.cost);
    for (const double share : {0.03, 0.1, 0.3, 1.0}) {
      if (!mayGoOn()) return;
      if (listAll({.vectors = 1'000'000, .compared = 600'000'000, .patterns = 20'000},
                  {linear.blankWorth, slack * share}))
        return;
    }
  }

  /// Of very many columns those the plan uses and those that waste least: enough to look for few
  /// layouts.
  void keepUseful(const LinearCover& linear) {
    if (columns_.size() <= kMostColumnsToSimplify) return;
    std::vector<std::size_t> order(columns_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto wasted = [&](std::size_t i) {
      if (best_.times[i] > 0) return -1.0;
      double worth = 0;
      for (std::size_t d = 0; d < linear.blankWorth.size(); ++d)
        worth += linear.blankWorth[d] * columns_[i].pattern.counts[d];
      return static_cast<double>(columns_[i].cost) - worth;
    };
    std::ranges::stable_sort(order, {}, wasted);
    order.resize(kMostColumnsToSimplify);
    std::vector<CoverColumn> columns;
    std::vector<int> times;
    for (const std::size_t i : order) {
      columns.push_back(std::move(columns_[i]));
      times.push_back(best_.times[i]);
    }
    columns_ = std::move(columns);
    best_.times = std::move(times);
  }

  Result<CuttingPlan> finishedBest() {
    if (options_.fewestLayouts) simplify();
    return finished();
  }

  bool addColumn(std::size_t s, Pattern pattern) {
    const auto known = [&](const CoverColumn& column) {
      return column.stock == static_cast<int>(s) && column.pattern.counts == pattern.counts;
    };
    if (std::ranges::any_of(columns_, known)) return false;
    columns_.push_back({static_cast<int>(s), costOf(s), std::move(pattern)});
    return true;
  }

  /// Column generation until no pattern is worth its sheet; `whole` keeps the bound.
  LinearCover generate(const CoverRows& rows, bool whole) {
    std::vector<SheetKnapsack> sheets;
    for (std::size_t s = 0; s < stock_.size(); ++s) sheets.push_back(knapsack(s, rows.demand));
    const bool limited = std::ranges::any_of(rows.atHand, [](int n) { return n >= 0; });
    const bool exact = std::ranges::all_of(sheets, &SheetKnapsack::exact);
    if (whole) exact_ = exact;
    while (true) {
      LinearCover linear = solveLinear(columns_, rows);
      double dearest = 0;  // the best pattern's worth by its sheet's cost
      bool grown = false;
      for (std::size_t s = 0; s < stock_.size(); ++s) {
        std::vector<double> worth = linear.blankWorth;
        for (std::size_t d = 0; d < worth.size(); ++d)
          if (rows.demand[d] <= 0 || !fits(s, d)) worth[d] = 0;
        Pattern pattern = sheets[s].best(worth);
        const double cost = static_cast<double>(costOf(s));
        dearest = std::max(dearest, pattern.value / cost);
        if (pattern.value + linear.sheetWorth[s] <= cost + kTiny) continue;
        grown = addColumn(s, std::move(pattern)) || grown;
      }
      if (whole && exact && linear.covered && !limited && dearest > 0)
        bound_ = std::max(bound_, roundedUp(linear.cost / std::max(1.0, dearest)));
      if (!grown && whole && exact && linear.covered)
        bound_ = std::max(bound_, roundedUp(linear.cost));
      if (!grown || !mayGoOn()) return linear;
    }
  }

  /// Farley's bound where the raster was too fine to price exactly: no pattern is worth more than
  /// the best of blanks that are a little smaller.
  void boundCoarsely(const LinearCover& linear) {
    if (std::ranges::any_of(rows_.atHand, [](int n) { return n >= 0; })) return;
    double dearest = 1;
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      std::vector<double> worth = linear.blankWorth;
      for (std::size_t d = 0; d < worth.size(); ++d)
        if (!fits(s, d)) worth[d] = 0;
      const double most = mostWorth(stock_[s].width.nm() / unit_, stock_[s].height.nm() / unit_,
                                    items(rows_.demand), worth);
      dearest = std::max(dearest, most / static_cast<double>(costOf(s)));
    }
    bound_ = std::max(bound_, roundedUp(linear.cost / dearest));
  }

  /// Takes the whole parts of the linear cover, then covers the rest anew, until nothing is left.
  void roundWithResiduals(LinearCover linear) {
    CoverRows rest = rows_;
    std::vector<int> times;
    const auto left = [&] { return std::ranges::any_of(rest.demand, [](int d) { return d > 0; }); };
    while (true) {
      times.resize(columns_.size(), 0);
      bool taken = false;
      for (std::size_t i = 0; i < linear.times.size(); ++i) {
        const int count = usable(i, static_cast<int>(std::floor(linear.times[i] + kTiny)), rest);
        taken = take(i, count, rest, times) || taken;
      }
      if (!left()) break;
      if (!taken) {
        const auto most = std::ranges::max_element(linear.times);
        const auto i = static_cast<std::size_t>(most - linear.times.begin());
        if (*most < kTiny || !take(i, usable(i, 1, rest), rest, times)) return;
      }
      if (!left()) break;
      linear = generate(rest, false);
      if (!linear.covered) return;
    }
    times.resize(columns_.size(), 0);
    keep(times);
  }

  /// Plans the large blanks alone and cuts the small ones from what is left over, with nothing,
  /// or the blanks before a leap in size, taken for large.
  void planBySize() {
    if (part_) return;
    std::vector<std::size_t> order(demands_.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    const auto area = [&](std::size_t d) {
      return demands_[d].width.mm() * demands_[d].height.mm();
    };
    std::ranges::stable_sort(order, std::ranges::greater(), area);
    std::vector<std::size_t> leaps;
    for (std::size_t k = 1; k < order.size(); ++k)
      if (area(order[k - 1]) > kLeap * area(order[k])) leaps.push_back(k);
    std::ranges::stable_sort(leaps, std::ranges::greater(),
                             [&](std::size_t k) { return area(order[k - 1]) / area(order[k]); });
    leaps.resize(std::min(leaps.size(), kMostLeaps));
    leaps.insert(leaps.begin(), 0);
    for (const std::size_t k : leaps) {
      if (best_.found && (best_.cost <= bound_ || (k > 0 && !mayGoOn()))) return;
      fillAfter({order.begin(), order.begin() + static_cast<std::ptrdiff_t>(k)});
    }
  }

  void fillAfter(const std::vector<std::size_t>& large) {
    std::vector<Layout> layouts;
    if (!large.empty()) {
      std::vector<BlankDemand> demands;
      for (const std::size_t d : large) demands.push_back(demands_[d]);
      const PlanOptions options{.seconds = std::min(0.3, options_.seconds), .fewestLayouts = false};
      Result<CuttingPlan> plan = Planner(stock_, demands, options, true).plan();
      if (!plan || plan->cost > (best_.found ? best_.cost : plan->cost)) return;
      layouts = std::move(std::move(plan).value().layouts);
    }
    std::vector<int> quantity = rows_.demand;
    for (Layout& layout : layouts) rename(layout.sheet, large);
    for (const std::size_t d : large) quantity[d] = 0;
    for (const bool byArea : {false, true})
      for (const bool longestFirst : {false, true})
        if (const auto filled =
                fillOffcuts(layouts, stock_, demands_, quantity, {byArea, longestFirst}))
          keepLayouts(*filled);
  }

  static void rename(CutNode& node, const std::vector<std::size_t>& demands) {
    if (node.demand >= 0)
      node.demand = static_cast<int>(demands[static_cast<std::size_t>(node.demand)]);
    for (CutNode& part : node.parts) rename(part, demands);
  }

  /// Layouts as columns, and their plan where it is the best so far.
  void keepLayouts(const std::vector<Layout>& layouts) {
    std::int64_t cost = 0;
    for (const Layout& layout : layouts)
      cost += layout.count * costOf(static_cast<std::size_t>(layout.stock));
    if (best_.found && cost >= best_.cost) return;
    std::vector<int> times(columns_.size(), 0);
    for (const Layout& layout : layouts) {
      Pattern pattern{0, blanksOf(layout, demands_.size()), layout.sheet};
      inUnits(pattern.sheet);
      const auto known = std::ranges::find_if(columns_, [&](const CoverColumn& column) {
        return column.stock == layout.stock && column.pattern.counts == pattern.counts;
      });
      const auto i = static_cast<std::size_t>(known - columns_.begin());
      if (known == columns_.end())
        addColumn(static_cast<std::size_t>(layout.stock), std::move(pattern));
      times.resize(columns_.size(), 0);
      times[i] += layout.count;
    }
    keep(times);
  }

  void inUnits(CutNode& node) const {
    for (Length* length : {&node.x, &node.y, &node.width, &node.height, &node.at})
      *length = *length / unit_;
    for (CutNode& part : node.parts) inUnits(part);
  }

  [[nodiscard]] int usable(std::size_t i, int wanted, const CoverRows& rest) const {
    const int atHand = rest.atHand[static_cast<std::size_t>(columns_[i].stock)];
    return atHand < 0 ? wanted : std::min(wanted, atHand);
  }

  bool take(std::size_t i, int count, CoverRows& rest, std::vector<int>& times) {
    if (count <= 0) return false;
    times[i] += count;
    int& atHand = rest.atHand[static_cast<std::size_t>(columns_[i].stock)];
    if (atHand >= 0) atHand -= count;
    for (std::size_t d = 0; d < rest.demand.size(); ++d)
      rest.demand[d] = std::max(0, rest.demand[d] - count * columns_[i].pattern.counts[d]);
    return true;
  }

  void keep(const std::vector<int>& times) {
    WholeCover found{true, 0, times};
    for (std::size_t i = 0; i < times.size(); ++i) found.cost += times[i] * columns_[i].cost;
    if (!best_.found || found.cost < best_.cost) best_ = std::move(found);
  }

  /// Whole-number covers over ever more columns, until one is proven.
  void improve(const LinearCover& linear) {
    constexpr int kRounds = 12;
    for (int round = 0; round < kRounds; ++round) {
      if (best_.found && best_.cost <= bound_) return;
      if (!mayGoOn()) return;
      if (round > 0 && !diversify(linear, round)) continue;
      const double seconds = std::clamp((options_.seconds - spent()) / 2, 0.2, options_.seconds);
      const WholeCover found = solveWhole(columns_, rows_, seconds);
      if (found.found && (!best_.found || found.cost < best_.cost)) best_ = found;
    }
  }

  /// New columns for shaken values of the blanks, always shaken alike; false when none is new.
  bool diversify(const LinearCover& linear, int round) {
    constexpr int kShakes = 100;
    std::minstd_rand random(static_cast<unsigned>(round));
    std::uniform_real_distribution<double> shake(1 - 0.06 * round, 1 + 0.06 * round);
    const std::size_t before = columns_.size();
    for (std::size_t s = 0; s < stock_.size(); ++s) {
      SheetKnapsack sheet = knapsack(s, rows_.demand);
      for (int i = 0; i < kShakes && mayGoOn(); ++i) {
        std::vector<double> worth = linear.blankWorth;
        for (std::size_t d = 0; d < worth.size(); ++d)
          worth[d] = fits(s, d) ? std::max(worth[d], kTiny) * shake(random) : 0;
        addColumn(s, sheet.best(worth));
      }
    }
    return columns_.size() > before;
  }

  void simplify() {
    best_.times.resize(columns_.size(), 0);
    const auto used = std::ranges::count_if(best_.times, [](int n) { return n > 0; });
    if (used < 2 || columns_.size() > kMostColumnsToSimplify || spent() > options_.seconds / 2)
      return;
    const WholeCover found = fewestColumns(columns_, rows_, best_.cost, 0.2);
    const auto fewer = std::ranges::count_if(found.times, [](int n) { return n > 0; });
    if (found.found && found.cost <= best_.cost && fewer < used) best_ = found;
  }

  /// Lengths back from units; blanks nobody asked for become offcuts.
  CuttingPlan finished() {
    CuttingPlan plan;
    plan.cost = best_.cost;
    plan.priced = priced_;
    plan.bound = std::min(bound_, best_.cost);
    std::vector<int> rest = rows_.demand;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (best_.times[i] <= 0) continue;
      addLayout(columns_[i], best_.times[i], rest, plan);
    }
    std::ranges::stable_sort(plan.layouts, std::ranges::greater(), &Layout::count);
    for (const Layout& layout : plan.layouts) plan.sheets += layout.count;
    return plan;
  }

  /// All sheets of a column are cut alike; of each blank only as many as are still needed, so that
  /// fewer than a sheet's worth of each comes out over.
  void addLayout(const CoverColumn& column, int times, std::vector<int>& rest,
                 CuttingPlan& plan) const {
    std::vector<int> most;
    for (std::size_t d = 0; d < rest.size(); ++d)
      most.push_back(
          std::min(column.pattern.counts[d], (std::max(rest[d], 0) + times - 1) / times));
    CutNode sheet = column.pattern.sheet;
    scale(sheet, unit_);
    for (std::size_t d = 0; d < rest.size(); ++d) rest[d] -= most[d] * times;
    std::vector<int> left = most;
    limit(sheet, left);
    plan.layouts.push_back({column.stock, times, neater(tidied(sheet), most)});
  }

  /// The layout or another one of the same blanks that is less work at the trimmer.
  [[nodiscard]] CutNode neater(CutNode sheet, const std::vector<int>& counts) const {
    std::optional<CutNode> other = neatLayout(sheet.width, sheet.height, demands_, counts);
    return other && trimmingWork(*other) < trimmingWork(sheet) ? std::move(*other)
                                                               : std::move(sheet);
  }

  const std::vector<StockSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  const PlanOptions& options_;
  bool part_;
  Clock::time_point start_;
  bool priced_ = false;
  bool exact_ = true;  // pricing finds the best pattern of all
  std::int64_t unit_ = 1;
  CoverRows rows_;
  std::vector<CoverColumn> columns_;
  std::int64_t bound_ = 0;
  WholeCover best_;
};

}  // namespace

namespace {

/// The name of the smallest sheet sold that holds a blank, turned or not; empty when there is none.
std::string_view smallestPaperFor(const BlankDemand& demand) {
  std::string_view name;
  double smallest = 0;
  const Length shorter = std::min(demand.width, demand.height);
  const Length longer = std::max(demand.width, demand.height);
  for (const Paper& paper : papers()) {
    const double size = paper.width.mm() * paper.height.mm();
    if (shorter > paper.width || longer > paper.height || (!name.empty() && size >= smallest))
      continue;
    name = paper.name;
    smallest = size;
  }
  return name;
}

}  // namespace

Result<CuttingPlan> planCutting(const std::vector<StockSheet>& stock,
                                const std::vector<BlankDemand>& demands,
                                const PlanOptions& options) {
  if (demands.empty() || stock.empty()) return Problem{ProblemCode::NoDemand, {}, {}};
  for (const BlankDemand& demand : demands) {
    const bool held = std::ranges::any_of(stock, [&](const StockSheet& sheet) {
      return (demand.width <= sheet.width && demand.height <= sheet.height) ||
             (demand.mayTurn && demand.width <= sheet.height && demand.height <= sheet.width);
    });
    if (!held)
      return Problem{ProblemCode::BlankTooLarge,
                     demand.name,
                     {demand.width, demand.height, std::string(smallestPaperFor(demand))}};
  }
  return Planner(stock, demands, options).plan();
}

}  // namespace creasewright
