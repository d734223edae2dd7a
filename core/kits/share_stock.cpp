#include "kits/share_stock.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "kits/cut_card.h"

namespace creasewright {
namespace {

int usedBy(const CardPlan& card, std::size_t stock) {
  int used = 0;
  for (const Layout& layout : card.plan.layouts)
    if (static_cast<std::size_t>(layout.stock) == stock) used += layout.count;
  return used;
}

/// Which of ClassKit::stock the cards use more of than is at hand.
std::vector<std::size_t> overdrawn(const KitPlan& plan) {
  std::vector<std::size_t> over;
  for (std::size_t s = 0; s < plan.kit().stock.size(); ++s) {
    const int atHand = plan.kit().stock[s].atHand;
    int used = 0;
    for (const CardPlan& card : plan.cards) used += usedBy(card, s);
    if (atHand >= 0 && used > atHand) over.push_back(s);
  }
  return over;
}

/// The card anew from other sheets at hand. What bounds it alone bounds it here too: no card
/// becomes cheaper by sharing.
std::optional<Problem> cutAgain(const PlanOptions& options, const std::vector<int>& atHand,
                                CardPlan& card) {
  const CuttingPlan alone = card.plan;
  std::optional<Problem> problem = cutCard(options, atHand, card);
  card.plan.bound = alone.bound;
  card.plan.proof = alone.proof;
  return problem;
}

/// How a card is cut with at most 0, 1, 2 ... sheets of a scarce kind; nothing where that has no
/// plan.
using PlansByShare = std::vector<std::optional<CardPlan>>;

PlansByShare plansByShare(const CardPlan& card, std::size_t stock, const PlanOptions& options) {
  std::vector<int> limits = atHandOf(card.kit());
  const int most = std::min(limits[stock], usedBy(card, stock));
  PlansByShare plans;
  for (int own = 0; own <= most; ++own) {
    std::optional<CardPlan>& plan = plans.emplace_back(card);
    limits[stock] = own;
    if (own < usedBy(card, stock) && cutAgain(options, limits, *plan)) plan.reset();
  }
  return plans;
}

/// The plan of each card, such that they use no more than `atHand` together and cost least; none
/// when no shares do.
std::vector<const CardPlan*> cheapestShares(const std::vector<PlansByShare>& cards, int atHand) {
  const auto sums = static_cast<std::size_t>(atHand) + 1;
  std::vector<std::optional<std::int64_t>> cost(sums, 0);  // by sheets at most, of the cards so far
  std::vector<std::vector<std::size_t>> own;               // by card, of the cheapest of each sum
  for (const PlansByShare& plans : cards) {
    std::vector<std::optional<std::int64_t>> next(sums);
    own.emplace_back(sums, 0);
    for (std::size_t n = 0; n < plans.size(); ++n)
      for (std::size_t all = n; plans[n] && all < sums; ++all) {
        const std::optional<std::int64_t>& before = cost[all - n];
        if (!before || (next[all] && *next[all] <= *before + plans[n]->plan.cost)) continue;
        next[all] = *before + plans[n]->plan.cost;
        own.back()[all] = n;
      }
    cost = std::move(next);
  }
  if (!cost.back()) return {};
  std::vector<const CardPlan*> chosen(cards.size());
  std::size_t all = sums - 1;
  for (std::size_t c = cards.size(); c-- > 0; all -= own[c][all])
    chosen[c] = &*cards[c][own[c][all]];
  return chosen;
}

/// The shares of one scarce kind of sheet that cost least in all. Nothing when there are too many
/// to plan, or no shares do.
std::optional<KitPlan> sharedBest(KitPlan plan, std::size_t stock, const PlanOptions& options) {
  constexpr int kMostPlans = 80;
  const int atHand = plan.kit().stock[stock].atHand;
  int plans = 0;
  for (const CardPlan& card : plan.cards) plans += std::min(atHand, usedBy(card, stock)) + 1;
  if (plans > kMostPlans) return std::nullopt;
  PlanOptions share = options;
  share.seconds = options.seconds / plans;
  std::vector<PlansByShare> cards;
  for (const CardPlan& card : plan.cards) cards.push_back(plansByShare(card, stock, share));
  const std::vector<const CardPlan*> chosen = cheapestShares(cards, atHand);
  if (chosen.empty()) return std::nullopt;
  for (std::size_t c = 0; c < chosen.size(); ++c) plan.cards[c] = *chosen[c];
  return plan;
}

/// The cards in every order of up to four; more only as they come and the other way.
std::vector<std::vector<std::size_t>> ordersOf(std::size_t cards) {
  constexpr std::size_t kAllOrders = 4;
  std::vector<std::size_t> order(cards);
  std::iota(order.begin(), order.end(), std::size_t{0});
  if (cards > kAllOrders) return {order, {order.rbegin(), order.rend()}};
  std::vector<std::vector<std::size_t>> all;
  do all.push_back(order);
  while (std::ranges::next_permutation(order).found);
  return all;
}

/// One card after the other takes what it wants of what is left, in the order that costs least.
Result<KitPlan> sharedInTurn(const KitPlan& plan, const PlanOptions& options) {
  const std::vector<std::vector<std::size_t>> orders = ordersOf(plan.cards.size());
  PlanOptions share = options;
  share.seconds = options.seconds / static_cast<double>(orders.size());
  std::optional<KitPlan> best;
  Problem lack;
  for (const std::vector<std::size_t>& order : orders) {
    KitPlan trial = plan;
    std::vector<int> atHand = atHandOf(plan.kit());
    std::optional<Problem> problem;
    for (std::size_t i = 0; i < order.size() && !problem; ++i) {
      CardPlan& card = trial.cards[order[i]];
      problem = cutAgain(share, atHand, card);
      takeSheets(atHand, card.plan);
    }
    if (problem)
      lack = *problem;
    else if (!best || trial.cost() < best->cost())
      best = std::move(trial);
  }
  if (!best) return lack;
  return *std::move(best);
}

}  // namespace

void takeSheets(std::vector<int>& atHand, const CuttingPlan& plan) {
  for (const Layout& layout : plan.layouts) {
    int& left = atHand[static_cast<std::size_t>(layout.stock)];
    if (left >= 0) left = std::max(0, left - layout.count);
  }
}

Result<KitPlan> withStockShared(KitPlan plan, const PlanOptions& options) {
  const std::vector<std::size_t> over = overdrawn(plan);
  if (over.empty()) return plan;
  if (over.size() == 1)
    if (std::optional<KitPlan> best = sharedBest(plan, over.front(), options))
      if (overdrawn(*best).empty()) return *std::move(best);
  Result<KitPlan> inTurn = sharedInTurn(plan, options);
  if (inTurn && !overdrawn(*inTurn).empty())
    return Problem{ProblemCode::PlanFaulty, "1", {std::string("sheets at hand")}};
  return inTurn;
}

}  // namespace creasewright
