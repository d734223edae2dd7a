#pragma once

#include <string_view>

#include "base/result.h"
#include "fit/card_colours.h"

namespace creasewright {

/// withPattern, where a picture may be meant too: `picture:leaves.png:scale=80mm:tiled=no` reads
/// its file. Errors: as there, and those of readPaperFile.
Result<CardColours> withPatternArgument(CardColours colours, std::string_view written);

/// Whether an argument names a picture's file: reading some needs Qt's painting.
bool namesPicture(std::string_view argument);

}  // namespace creasewright
