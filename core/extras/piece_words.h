#pragma once

#include <string>
#include <vector>

#include "net/net.h"
#include "styles/parameter_spec.h"
#include "styles/parameters.h"

namespace creasewright {

/// Whether lines of words are bent to the circle that fits into their piece, inside its rim.
enum class WordsCurve {
  Straight,
  Upper,  ///< over the middle
  Lower,  ///< under it
  Round   ///< the first line over it, the last one under it, the others straight between them
};

/// How the words on a piece are set.
struct WordsLook {
  Typeface face = Typeface::Plain;
  WordsSide side = WordsSide::Centre;  ///< of straight lines
  WordsCurve curve = WordsCurve::Straight;
  int points = 0;  ///< type size; 0 = as large as looks well and fits
};

/// What the words of an extra or of a layer can be told, in files since version 8.
std::vector<ParameterSpec> wordsParameters();
/// Those of a list that are none of them.
std::vector<ParameterSpec> withoutWords(std::vector<ParameterSpec> specs);
WordsLook wordsLookOf(const Parameters& parameters);

/// Writes lines onto the first panel of a net.
void writeOn(const std::vector<std::string>& lines, const WordsLook& look, Net& net);

}  // namespace creasewright
