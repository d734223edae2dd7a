#include "kits/first_sheet.h"

#include <algorithm>
#include <numeric>

#include "document/build.h"

namespace creasewright {
namespace {

struct Size {
  Length width;
  Length height;
};

/// The sizes of all blanks; of a design that cannot be built none.
std::vector<Size> sizesOf(const ClassKit& kit) {
  std::vector<Size> sizes;
  for (const KitItem& item : kit.items) {
    const Result<BuiltDesign> built = build(item.design);
    if (!built) continue;
    for (const BuiltPiece& piece : built->pieces)
      if (item.piece.empty() || piece.piece.name == item.piece)
        sizes.push_back({Length::mm(piece.flat.width), Length::mm(piece.flat.height)});
  }
  for (const PlainBlank& blank : kit.blanks) sizes.push_back({blank.width, blank.height});
  return sizes;
}

bool holds(const StockSheet& sheet, const Size& size) {
  return (size.width <= sheet.width && size.height <= sheet.height) ||
         (size.width <= sheet.height && size.height <= sheet.width);
}

/// Whether a sheet is sold by inches.
bool inInches(const StockSheet& sheet) { return sheet.width.nm() % Length::inches(1, 2).nm() == 0; }

}  // namespace

int firstSheetFor(const ClassKit& kit, const std::vector<StockSheet>& stock, int usual) {
  const std::vector<Size> sizes = sizesOf(kit);
  std::vector<std::size_t> order(stock.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  const auto first = static_cast<std::size_t>(usual);
  std::ranges::stable_sort(order, {}, [&](std::size_t i) {
    const bool other = inInches(stock[i]) != inInches(stock[first]);
    return i == first ? std::pair(false, 0.0)
                      : std::pair(other, stock[i].width.mm() * stock[i].height.mm());
  });
  const auto found = std::ranges::find_if(order, [&](std::size_t i) {
    return stock[i].card.empty() &&
           std::ranges::all_of(sizes, [&](const Size& size) { return holds(stock[i], size); });
  });
  return found == order.end() ? usual : static_cast<int>(*found);
}

}  // namespace creasewright
