#pragma once

#include "drawing/drawing.h"
#include "fit/card_colours.h"

namespace creasewright {

/// Words as they are printed on the face of card: in ink, or in white where that stands out more;
/// and under them a white plate where the paper has one, half their size beyond them (common
/// practice, no published source). Of a blank that is stamped only the plate.
Drawing printedWords(const std::vector<TextItem>& texts, const CardColours& colours,
                     bool stamped = false);

}  // namespace creasewright
