#pragma once

#include <string_view>

#include "base/result.h"
#include "fit/card_colours.h"

namespace creasewright {

/// `colours` with the pattern that is written as `ID`, or
/// `ID:scale=12mm:turn=45:colours=sage,cream:side=back` with as much of that as is wanted; a slash
/// may part the colours too, as in `colours=sage/cream`. `none` takes the pattern away. Errors:
/// PatternUnknown, PatternUnreadable, PatternScaleOff, PatternColours, ColourUnknown.
Result<CardColours> withPattern(CardColours colours, std::string_view text);

}  // namespace creasewright
