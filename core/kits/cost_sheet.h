#pragma once

#include <optional>
#include <vector>

#include "kits/kit_plan.h"

namespace creasewright {

/// What one finished box costs its maker, and what it is sold for; smallest coin.
struct BoxPrice {
  int item = 0;             ///< of ClassKit::items
  int minutes = 0;          ///< of work
  std::int64_t card = 0;    ///< its share of whole sheets, by area: what is left over counts
  std::int64_t sticky = 0;  ///< tape and glue
  std::int64_t ribbon = 0;
  std::int64_t work = 0;
  std::int64_t overhead = 0;
  std::int64_t cost = 0;   ///< the sum of the above
  std::int64_t price = 0;  ///< cost / (1 - margin) / (1 - fee), rounded up
};

/// What a person pays for a seat.
struct SeatPrice {
  std::int64_t material = 0;          ///< in one bag, overhead on it
  std::int64_t share = 0;             ///< of the class's costs
  std::int64_t price = 0;             ///< of both, with margin and fee
  std::optional<int> breakEven = {};  ///< from so many takers on nothing is lost at that price
};

struct CostSheet {
  std::vector<BoxPrice> boxes;  ///< of the items that are whole designs
  SeatPrice seat;
  bool complete = true;  ///< everything used has a price
};

/// Card, tape and ribbon by what is used of them, spare sets shared out among the takers. Margin is
/// a share of the price, not on top of the cost: price = cost / (1 - margin). A seat carries an
/// equal share of the class's costs (ways of craft price guides; common practice, no published
/// source). Nothing for a kit without prices.
std::optional<CostSheet> costSheetOf(const KitPlan& plan);

}  // namespace creasewright
