#include "kits/first_sheet.h"

#include <algorithm>
#include <numeric>

#include "kits/cut_sheet.h"

namespace creasewright {
namespace {

/// Whether every blank of a class fits a sheet, turned or not.
bool holdsAll(const StockSheet& sheet, const BuiltKit& kit) {
  return std::ranges::all_of(
      kit.cards,
      [&](const CardBlanks& card) {
        return std::ranges::all_of(
            card.demands, [&](const BlankDemand& blank) { return holds(cutSheet(sheet), blank); });
      });
}

}  // namespace

int firstSheetFor(const BuiltKit& kit, const std::vector<StockSheet>& stock, int usual) {
  std::vector<std::size_t> order(stock.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto first = static_cast<std::size_t>(usual);
  std::ranges::stable_sort(
      order, {},
      [&](std::size_t i) {
        const bool other = soldByInches(stock[i]) != soldByInches(stock[first]);
        return i == first ? std::pair(false, 0.0)
                          : std::pair(other, stock[i].width.mm() * stock[i].height.mm());
      });
  const auto found = std::ranges::find_if(order, [&](std::size_t i) {
    return stock[i].card.empty() && stock[i].colours == CardColours() && holdsAll(stock[i], kit);
  });
  return found == order.end() ? usual : static_cast<int>(*found);
}

}  // namespace creasewright
