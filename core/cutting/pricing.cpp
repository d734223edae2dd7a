#include "cutting/pricing.h"

#include <cmath>
#include <limits>

namespace creasewright {

Pricing::Pricing(PlanState& state, std::size_t mostWork) : state_(state) {
  for (std::size_t s = 0; s < state.stock.size() && state.mayGoOn(); ++s)
    sheets_.push_back(state.knapsack(s, state.rows.demand, mostWork));
}

std::optional<Priced> Pricing::best(std::vector<double> prices, const CoverRows& rows) {
  if (sheets_.size() < state_.stock.size()) return std::nullopt;
  for (std::size_t d = 0; d < prices.size(); ++d)
    prices[d] = rows.demand[d] > 0 ? std::max(0.0, prices[d]) : 0;
  const double scale = scaleFor(prices);
  for (double& price : prices) price = std::floor(price * scale);
  Priced priced;
  std::vector<SheetValue> values;
  for (std::size_t s = 0; s < sheets_.size(); ++s) {
    std::optional<Pattern> pattern = sheets_[s].best(state_.worthOn(s, prices), state_.work);
    if (!pattern) return std::nullopt;
    priced.proof.most.push_back(static_cast<std::int64_t>(pattern->value));
    values.push_back({state_.costOf(s), rows.atHand[s], pattern->value});
    priced.patterns.push_back(*std::move(pattern));
  }
  double demanded = 0;
  for (std::size_t d = 0; d < prices.size(); ++d) {
    demanded += prices[d] * std::max(rows.demand[d], 0);
    priced.proof.worth.push_back(static_cast<std::int64_t>(prices[d]));
  }
  priced.bound = costBound(demanded, values);
  return priced;
}

double Pricing::scaleFor(const std::vector<double>& prices) const {
  double scale = std::numeric_limits<double>::infinity();
  for (std::size_t s = 0; s < sheets_.size(); ++s)
    scale = std::min(scale, sheets_[s].mostScale(state_.worthOn(s, prices)));
  return scale;
}

}  // namespace creasewright
