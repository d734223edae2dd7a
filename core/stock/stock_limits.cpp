#include "stock/list_limits.h"
#include "stock/stock_list.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::optional<Problem> sheetProblem(const StockSheet& sheet) {
  if (auto problem = textsProblem({{"name", sheet.name},
                                   {"code", sheet.code},
                                   {"card", sheet.card},
                                   {"basis", sheet.basis}}))
    return problem;
  if (auto problem = countWithin("price", sheet.price, 0, kDearest)) return problem;
  if (auto problem = countWithin("owned", sheet.owned, 0, kMostCounted)) return problem;
  return countWithin("at_hand", sheet.atHand, -1, kMostCounted);
}

std::optional<Problem> supplyProblem(const SupplyItem& item) {
  if (auto problem = textsProblem({{"name", item.name}, {"code", item.code}})) return problem;
  if (item.length > kLongestRoll) {
    constexpr std::int64_t kMetre = 1'000'000'000;
    return Problem{
        ProblemCode::RollTooLong, item.name, {item.length.mm() / 1000, kLongestRoll.nm() / kMetre}};
  }
  if (auto problem = countWithin("pieces", item.pieces, 0, kMostCounted)) return problem;
  if (auto problem = countWithin("price", item.price, 0, kDearest)) return problem;
  return countWithin("at_hand", item.atHand, 0, kMostCounted);
}

}  // namespace

std::optional<Problem> fileLimitProblem(const std::vector<StockSheet>& stock) {
  return listProblem("stock", stock, kMostSheets, sheetProblem);
}

std::optional<Problem> fileLimitProblem(const std::vector<SupplyItem>& supplies) {
  return listProblem("supplies", supplies, kMostSupplies, supplyProblem);
}

}  // namespace creasewright
