#pragma once

#include "folding/cavity/cavity_parts.h"

namespace creasewright {

/// Whether any piece lies across all three axes or two of them.
bool hasSlantedCard(const std::vector<Piece3>& pieces);

/// A box about the seed that is free of card and within `limits`, grown to the wanted sizes (mm
/// along the axes) where there is room: as far to both sides of the seed where both are free, else
/// away from the side where card or a limit is. Without wanted sizes a cube. No volume when the
/// seed lies in card.
Box grownBox(const std::vector<Piece3>& pieces, const Coordinates& seed, const Coordinates& wanted,
             const Box& limits, double half);

}  // namespace creasewright
