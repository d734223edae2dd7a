#include "kits/share_stock.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "kits/cut_card.h"

namespace creasewright {
namespace {

/// Takes the sheets of a plan away.
void take(std::vector<int>& atHand, const CuttingPlan& plan) {
  for (const Layout& layout : plan.layouts) {
    int& left = atHand[static_cast<std::size_t>(layout.stock)];
    if (left >= 0) left = std::max(0, left - layout.count);
  }
}

/// Which of ClassKit::stock the cards use more of than is at hand.
std::vector<std::size_t> overdrawn(const KitPlan& plan) {
  std::vector<std::size_t> over;
  std::vector<int> atHand = atHandOf(plan.kit());
  std::vector<int> used(atHand.size());
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.plan.layouts)
      used[static_cast<std::size_t>(layout.stock)] += layout.count;
  for (std::size_t s = 0; s < used.size(); ++s)
    if (atHand[s] >= 0 && used[s] > atHand[s]) over.push_back(s);
  return over;
}

int usedBy(const CardPlan& card, std::size_t stock) {
  int used = 0;
  for (const Layout& layout : card.plan.layouts)
    if (static_cast<std::size_t>(layout.stock) == stock) used += layout.count;
  return used;
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

/// Plans of each card with at most so many sheets of one kind, and the shares that cost least in
/// all. Nothing when there are too many to plan, or no shares do.
std::optional<KitPlan> sharedBest(const KitPlan& plan, std::size_t stock,
                                  const PlanOptions& options) {
  constexpr int kMostPlans = 80;
  const int atHand = plan.kit().stock[stock].atHand;
  int plans = 0;
  for (const CardPlan& card : plan.cards) plans += std::min(atHand, usedBy(card, stock)) + 1;
  if (plans > kMostPlans) return std::nullopt;
  PlanOptions share = options;
  share.seconds = options.seconds / plans;
  std::vector<std::optional<KitPlan>> best(static_cast<std::size_t>(atHand) + 1);
  std::ranges::fill(best, plan);
  std::vector<std::int64_t> cost(best.size());
  for (std::size_t c = 0; c < plan.cards.size(); ++c) {
    std::vector<std::optional<KitPlan>> next(best.size());
    std::vector<std::int64_t> nextCost(best.size());
    const int most = std::min(atHand, usedBy(plan.cards[c], stock));
    for (int own = 0; own <= most; ++own) {
      std::vector<int> limits = atHandOf(plan.kit());
      limits[stock] = own;
      CardPlan card = plan.cards[c];
      if (own < usedBy(card, stock) && cutAgain(share, limits, card)) continue;
      for (int all = own; all <= atHand; ++all) {
        const auto before = static_cast<std::size_t>(all - own);
        const auto now = static_cast<std::size_t>(all);
        if (!best[before]) continue;
        const std::int64_t sum = cost[before] + card.plan.cost;
        if (next[now] && nextCost[now] <= sum) continue;
        next[now] = best[before];
        next[now]->cards[c] = card;
        nextCost[now] = sum;
      }
    }
    best = std::move(next);
    cost = std::move(nextCost);
  }
  return best.back();
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
      take(atHand, card.plan);
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
