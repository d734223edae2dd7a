#include "cutting/easy_plan.h"

#include <algorithm>
#include <set>

#include "cutting/check_plan.h"
#include "cutting/easy_layouts.h"
#include "cutting/fewer_settings.h"
#include "cutting/finish_layouts.h"
#include "cutting/small_blanks.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr double kLayoutTrouble = 1;         // sheets
constexpr double kSettingTrouble = 1.0 / 5;  // sheets
constexpr std::size_t kMostStates = 30;      // go on from one number of layouts to the next
constexpr std::size_t kMoreLayouts = 3;      // than sizes
constexpr double kCountTry = 60;             // steps, for a layout and a number of sheets
constexpr double kGatheringShare = 0.4;

struct Chosen {
  std::size_t layout = 0;
  int times = 0;
  auto operator<=>(const Chosen&) const = default;
};

/// Some layouts, and what is still to be cut.
struct State {
  std::vector<Chosen> chosen;
  std::vector<int> rest;    // by demand; negative = beyond what is needed
  std::vector<int> atHand;  // by kind of sheet
  double sum = 0;           // of cost and trouble, in sheets
};

/// One layout more.
struct Step {
  double score = 0;
  std::size_t state = 0;
  Chosen more;
};

class Choosing {
 public:
  Choosing(const std::vector<CutSheet>& stock, const std::vector<BlankDemand>& demands,
           const std::vector<EasyLayout>& layouts, const CuttingPlan& fewest, Work& work)
      : stock_(stock), demands_(demands), layouts_(layouts), priced_(fewest.priced), work_(work) {
    sheet_ = static_cast<double>(fewest.cost) / std::max(1, fewest.sheets);
    for (std::size_t s = 0; s < stock.size(); ++s) {
      const double area = stock[s].width.mm() * stock[s].height.mm();
      const double cost = costOf(s) / area;
      if (s == 0 || cost < byArea_) byArea_ = cost;
    }
    tryFewest(fewest);
    tryPlain();
  }

  std::optional<std::vector<Chosen>> run() {
    std::vector<State> states{start()};
    if (isDone(states.front().rest)) return std::vector<Chosen>{};
    for (std::size_t n = 0; n < demands_.size() + kMoreLayouts && !states.empty(); ++n) {
      std::vector<Step> steps;
      for (std::size_t i = 0; i < states.size(); ++i) addSteps(states[i], i, steps);
      states = bestOf(states, std::move(steps));
    }
    return best_;
  }

 private:
  [[nodiscard]] double costOf(std::size_t s) const {
    return priced_ ? static_cast<double>(stock_[s].cost) / sheet_ : 1;
  }

  [[nodiscard]] State start() const {
    State state;
    for (const BlankDemand& demand : demands_) state.rest.push_back(demand.quantity);
    for (const CutSheet& sheet : stock_) state.atHand.push_back(sheet.atHand);
    return state;
  }

  static bool isDone(const std::vector<int>& rest) {
    return std::ranges::all_of(
        rest, [](int n) { return n <= 0; });
  }

  [[nodiscard]] double sumWith(double sum, const Chosen& more) const {
    const EasyLayout& layout = layouts_[more.layout];
    return sum + costOf(static_cast<std::size_t>(layout.stock)) * more.times + kLayoutTrouble +
           kSettingTrouble * layout.settings;
  }

  void cut(State& state, const Chosen& more) const {
    const EasyLayout& layout = layouts_[more.layout];
    for (std::size_t d = 0; d < state.rest.size(); ++d)
      state.rest[d] -= layout.counts[d] * more.times;
    int& atHand = state.atHand[static_cast<std::size_t>(layout.stock)];
    if (atHand >= 0) atHand -= more.times;
    state.sum = sumWith(state.sum, more);
    state.chosen.push_back(more);
  }

  void keep(const State& state) {
    if (best_ && state.sum >= least_) return;
    best_ = state.chosen;
    least_ = state.sum;
  }

  /// The plan of fewest sheets, where all of its layouts are among those to choose from.
  void tryFewest(const CuttingPlan& fewest) {
    State state = start();
    for (const Layout& layout : fewest.layouts) {
      std::vector<int> counts = blanksOf(layout, demands_.size());
      for (std::size_t d = 0; d < counts.size(); ++d)
        if (demands_[d].quantity == 0) counts[d] = 0;
      const auto known = std::ranges::find_if(layouts_, [&](const EasyLayout& easy) {
        return easy.stock == layout.stock && easy.counts == counts;
      });
      if (known == layouts_.end()) return;
      cut(state, {static_cast<std::size_t>(known - layouts_.begin()), layout.count});
    }
    if (isDone(state.rest)) keep(state);
  }

  /// The sizes one after the other, each from the layout that is least for it.
  void tryPlain() {
    State state = start();
    for (std::size_t d = 0; d < state.rest.size(); ++d) {
      std::optional<Chosen> least;
      for (std::size_t l = 0; l < layouts_.size() && state.rest[d] > 0; ++l) {
        const int count = layouts_[l].counts[d];
        const int atHand = state.atHand[static_cast<std::size_t>(layouts_[l].stock)];
        if (count == 0) continue;
        const Chosen more{l, (state.rest[d] + count - 1) / count};
        if ((atHand < 0 || more.times <= atHand) &&
            (!least || sumWith(0, more) < sumWith(0, *least)))
          least = more;
      }
      if (least) cut(state, *least);
    }
    if (isDone(state.rest)) keep(state);
  }

  void addSteps(const State& state, std::size_t index, std::vector<Step>& steps) {
    for (std::size_t l = 0; l < layouts_.size(); ++l) {
      const EasyLayout& layout = layouts_[l];
      std::set<int> numbers;  // that use up one of the sizes, or all but a part of a sheet
      for (std::size_t d = 0; d < state.rest.size(); ++d) {
        if (layout.counts[d] == 0 || state.rest[d] <= 0) continue;
        numbers.insert((state.rest[d] + layout.counts[d] - 1) / layout.counts[d]);
        numbers.insert(state.rest[d] / layout.counts[d]);
      }
      const int atHand = state.atHand[static_cast<std::size_t>(layout.stock)];
      for (const int times : numbers) {
        if (times == 0 || (atHand >= 0 && times > atHand)) continue;
        if (!work_.add(kCountTry)) return;
        const double score = scoreOf(state, {l, times});
        if (!best_ || score < least_) steps.push_back({score, index, {l, times}});
      }
    }
  }

  /// What a plan that begins so may come to: what is left by its area, a layout for each two sizes.
  [[nodiscard]] double scoreOf(const State& state, const Chosen& more) const {
    const EasyLayout& layout = layouts_[more.layout];
    double area = 0;
    int sizes = 0;
    for (std::size_t d = 0; d < state.rest.size(); ++d) {
      const int rest = state.rest[d] - layout.counts[d] * more.times;
      if (rest <= 0) continue;
      area += demands_[d].width.mm() * demands_[d].height.mm() * rest;
      ++sizes;
    }
    const int further = (sizes + 1) / 2;
    return sumWith(state.sum, more) + area * byArea_ +
           further * (kLayoutTrouble + 2 * kSettingTrouble);
  }

  std::vector<State> bestOf(const std::vector<State>& states, std::vector<Step> steps) {
    std::ranges::stable_sort(steps, {}, &Step::score);
    std::vector<State> next;
    std::set<std::vector<Chosen>> known;
    for (const Step& step : steps) {
      if (next.size() >= kMostStates) break;
      State state = states[step.state];
      cut(state, step.more);
      std::vector<Chosen> chosen = state.chosen;
      std::ranges::sort(chosen);
      if (!known.insert(std::move(chosen)).second) continue;
      if (isDone(state.rest))
        keep(state);
      else
        next.push_back(std::move(state));
    }
    return next;
  }

  const std::vector<CutSheet>& stock_;
  const std::vector<BlankDemand>& demands_;
  const std::vector<EasyLayout>& layouts_;
  bool priced_;
  Work& work_;
  double sheet_ = 1;   // what one costs
  double byArea_ = 0;  // least cost of a square millimetre, in sheets
  std::optional<std::vector<Chosen>> best_;
  double least_ = 0;
};

/// The sheets of a layout, without blanks that nobody needs where that takes no more settings.
void addLayout(const EasyLayout& easy, int times, const CutSheet& sheet,
               const std::vector<BlankDemand>& demands, bool noExtras, std::vector<int>& rest,
               std::vector<Layout>& layouts, Work& work) {
  for (const SheetsAlike& alike : sheetsFor(easy.counts, times, rest, noExtras)) {
    if (std::ranges::all_of(alike.counts, [](int n) { return n == 0; })) continue;
    std::optional<CutNode> fewer;
    if (alike.counts != easy.counts)
      fewer = leastWork(sheet, demands, alike.counts, std::nullopt, work);
    const bool whole = !fewer || (!noExtras && trimEffort(*fewer).settings > easy.settings);
    if (whole)
      for (std::size_t d = 0; d < rest.size(); ++d)
        rest[d] -= (easy.counts[d] - alike.counts[d]) * alike.sheets;
    layouts.push_back({easy.stock, alike.sheets, whole ? easy.sheet : *std::move(fewer)});
  }
}

void addUp(CuttingPlan& plan, const std::vector<CutSheet>& stock) {
  std::ranges::stable_sort(plan.layouts, std::ranges::greater(), &Layout::count);
  for (const Layout& layout : plan.layouts) {
    plan.sheets += layout.count;
    plan.cost +=
        layout.count * (plan.priced ? stock[static_cast<std::size_t>(layout.stock)].cost : 1);
  }
}

}  // namespace

std::vector<BlankDemand> roundedUp(const std::vector<CutSheet>& stock,
                                   std::vector<BlankDemand> demands, ToolGrid trimmer) {
  const auto held = [&](const BlankDemand& blank) {
    return std::ranges::any_of(stock, [&](const CutSheet& sheet) { return holds(sheet, blank); });
  };
  for (BlankDemand& demand : demands)
    for (Length BlankDemand::*side : {&BlankDemand::width, &BlankDemand::height}) {
      BlankDemand larger = demand;
      larger.*side = trimmer.roundUp(demand.*side);
      if (held(larger)) demand = std::move(larger);
    }
  return demands;
}

std::optional<CuttingPlan> easyPlan(const std::vector<CutSheet>& stock,
                                    const std::vector<BlankDemand>& demands,
                                    const CuttingPlan& fewest, const EasyOptions& options,
                                    Work& work) {
  const std::vector<BlankDemand> wanted = roundedUp(stock, demands, options.trimmer);
  std::vector<BlankDemand> large = wanted;
  for (BlankDemand& demand : large)
    if (isSmall(demand)) demand.quantity = 0;
  std::vector<EasyLayout> layouts;
  {
    const WorkShare share(work, kGatheringShare * work.left());
    layouts = easyLayouts(stock, large, fewest.layouts, work);
  }
  const auto chosen = Choosing(stock, large, layouts, fewest, work).run();
  if (!chosen) return std::nullopt;
  CuttingPlan plan;
  plan.bound = fewest.bound;
  plan.proof = fewest.proof;
  plan.priced = fewest.priced;
  plan.work = fewest.work;
  std::vector<int> rest;
  for (const BlankDemand& demand : large) rest.push_back(demand.quantity);
  for (const Chosen& choice : *chosen) {
    const EasyLayout& easy = layouts[choice.layout];
    addLayout(easy, choice.times, stock[static_cast<std::size_t>(easy.stock)], large,
              options.noExtras, rest, plan.layouts, work);
  }
  setLessOften(plan.layouts, stock, large, options.seconds * Work::kSecond, work);
  if (!addSmallBlanks(plan.layouts, stock, wanted, options.noExtras)) return std::nullopt;
  addUp(plan, stock);
  if (work.stopped() || checkPlan(plan, stock, wanted)) return std::nullopt;
  return plan;
}

}  // namespace creasewright
