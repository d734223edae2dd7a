#pragma once

#include <vector>

#include "fit/card_colours.h"

namespace creasewright {

/// Every colour that words on a side of card may stand on: its own or those of its pattern; white
/// where the card is plain.
std::vector<Colour> coloursUnder(const CardColours& colours, bool behind);

}  // namespace creasewright
