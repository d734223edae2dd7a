#pragma once

#include <span>

#include "styles/net_words.h"

namespace creasewright {

/// Words for codes that styles with nothing else in common share; every net may use them.
const NetWords& commonWords();

/// Words for a side as the place of a part: `left-front`.
std::span<const CodeWords> placeWords();

}  // namespace creasewright
