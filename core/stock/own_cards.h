#pragma once

#include <vector>

#include "fit/card.h"
#include "stock/stock_sheet.h"

namespace creasewright {

/// The cards of a person's own sheets, in each of their colours: each `card` of the list that is
/// none of ours, or one of ours in a colour, and whose thickness is told, or follows from its
/// weight with the usual bulk. The first sheet of a card
/// names it, without its size: `Patterned paper, A4` is a sheet of `Patterned paper`; a sheet
/// called by its size alone leaves the card its id for a name.
std::vector<Card> ownCards(const std::vector<StockSheet>& stock);

/// A card by id from a person's sheets, or else as findCard. Errors: those of findCard.
Result<Card> findCard(std::string_view text, const std::vector<StockSheet>& stock);

}  // namespace creasewright
