#pragma once

#include "styles/style.h"

namespace creasewright {

/// A rectangle of card to start from by hand: the base of a box, as long and wide as the product,
/// with a height that walls may name. It is no packaging yet and not among styles(); findStyle
/// knows it.
const Style& blankSheet();

}  // namespace creasewright
