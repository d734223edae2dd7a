#pragma once

#include <span>

#include "base/colour.h"

namespace creasewright {

/// How much white is mixed into colours, 0 to 1, so that cuts, folds and measures drawn on each of
/// them stand out by 3 to 1 (WCAG 2.1, 1.4.11): none into light ones.
double veilFor(std::span<const Colour> colours);

/// A colour with so much white.
Colour veiled(Colour colour, double veil);

}  // namespace creasewright
