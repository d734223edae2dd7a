#include "kits/own_cards.h"

#include <algorithm>
#include <optional>

namespace creasewright {
namespace {

std::optional<Card> cardOf(const StockSheet& sheet) {
  if (sheet.card.empty() || std::ranges::count(cards(), sheet.card, &Card::id) > 0)
    return std::nullopt;
  const Length thickness =
      sheet.caliper > Length() ? sheet.caliper : caliper(sheet.grammage, kUsualBulk);
  if (thickness <= Length()) return std::nullopt;
  return Card{sheet.card, sheet.name, thickness, sheet.grammage};
}

}  // namespace

std::vector<Card> ownCards(const std::vector<StockSheet>& stock) {
  std::vector<Card> own;
  for (const StockSheet& sheet : stock)
    if (std::optional<Card> card = cardOf(sheet);
        card && std::ranges::count(own, card->id, &Card::id) == 0)
      own.push_back(std::move(*card));
  return own;
}

Result<Card> findCard(std::string_view text, const std::vector<StockSheet>& stock) {
  const std::vector<Card> own = ownCards(stock);
  const auto found = std::ranges::find(own, text, &Card::id);
  if (found != own.end()) return *found;
  return findCard(text);
}

}  // namespace creasewright
