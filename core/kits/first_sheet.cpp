#include "kits/first_sheet.h"

#include <algorithm>
#include <numeric>

#include "document/build.h"

namespace creasewright {
namespace {

/// One blank of every size, which may be turned; of a design that cannot be built none.
std::vector<BlankDemand> everyBlank(const ClassKit& kit) {
  std::vector<BlankDemand> blanks;
  for (const KitItem& item : kit.items) {
    const Result<BuiltDesign> built = build(item.design);
    if (!built) continue;
    for (const BuiltPiece& piece : built->pieces)
      if (item.cuts(piece.piece.name))
        blanks.push_back({{}, Length::mm(piece.flat.width), Length::mm(piece.flat.height)});
  }
  for (const PlainBlank& blank : kit.blanks) blanks.push_back({{}, blank.width, blank.height});
  return blanks;
}

}  // namespace

bool soldByInches(const StockSheet& sheet) {
  return sheet.width.nm() % Length::inches(1, 2).nm() == 0;
}

int firstSheetFor(const ClassKit& kit, const std::vector<StockSheet>& stock, int usual) {
  const std::vector<BlankDemand> blanks = everyBlank(kit);
  std::vector<std::size_t> order(stock.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto first = static_cast<std::size_t>(usual);
  std::ranges::stable_sort(order, {}, [&](std::size_t i) {
    const bool other = soldByInches(stock[i]) != soldByInches(stock[first]);
    return i == first ? std::pair(false, 0.0)
                      : std::pair(other, stock[i].width.mm() * stock[i].height.mm());
  });
  const auto found = std::ranges::find_if(order, [&](std::size_t i) {
    return stock[i].card.empty() && std::ranges::all_of(blanks, [&](const BlankDemand& blank) {
             return holds(stock[i], blank);
           });
  });
  return found == order.end() ? usual : static_cast<int>(*found);
}

}  // namespace creasewright
