#pragma once

#include "fit/card_colours.h"
#include "lettering/typeface.h"

namespace creasewright {

/// The contrast that words need (WCAG 2.1, 1.4.3), and the size under which few read them (6.5 pt:
/// an x-height of 1.2 mm, Regulation (EU) 1169/2011, Art. 13(2)).
inline constexpr double kReadableContrast = 4.5;
inline constexpr double kSmallestPoints = 6.5;

/// How words stand out from what is printed under them.
struct WordsOn {
  bool white = false;    ///< white stands out more than ink
  double contrast = 21;  ///< from the colour that is likest to them
};

/// Words on the face of card; on a white plate where its pattern has one.
WordsOn wordsOn(const CardColours& colours);

}  // namespace creasewright
