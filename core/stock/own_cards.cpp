#include "stock/own_cards.h"

#include <algorithm>
#include <optional>
#include <string>

#include "units/paper.h"

namespace creasewright {
namespace {

bool isSize(std::string_view words) {
  const bool number = !words.empty() && words.front() >= '0' && words.front() <= '9';
  return number || findPaper(words).ok();
}

/// A card is no sheet: its name tells no size.
std::string cardName(const StockSheet& sheet) {
  const std::string_view name = sheet.name;
  const std::size_t comma = name.rfind(", ");
  if (comma != std::string_view::npos && isSize(name.substr(comma + 2)))
    return std::string(name.substr(0, comma));
  return name.empty() || isSize(name) ? sheet.card : sheet.name;
}

std::optional<Card> cardOf(const StockSheet& sheet) {
  if (sheet.card.empty()) return std::nullopt;
  if (const auto ours = std::ranges::find(cards(), sheet.card, &Card::id); ours != cards().end()) {
    if (sheet.colours == CardColours()) return std::nullopt;
    Card coloured = *ours;
    coloured.colours = sheet.colours;
    return coloured;
  }
  const Length thickness =
      sheet.caliper > Length() ? sheet.caliper : caliper(sheet.grammage, kUsualBulk);
  if (thickness <= Length()) return std::nullopt;
  return Card{sheet.card, cardName(sheet), thickness, sheet.grammage, sheet.colours};
}

}  // namespace

std::vector<Card> ownCards(const std::vector<StockSheet>& stock) {
  std::vector<Card> own;
  for (const StockSheet& sheet : stock)
    if (std::optional<Card> card = cardOf(sheet);
        card && std::ranges::none_of(own, [&](const Card& other) {
          return other.id == card->id && other.colours == card->colours;
        }))
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
