#include "drawing/words_on.h"

#include <algorithm>

#include "drawing/contrast.h"
#include "fit/colours_under.h"

namespace creasewright {
namespace {

constexpr Colour kWhite{0xFF, 0xFF, 0xFF};

double leastContrast(Colour words, const std::vector<Colour>& under) {
  double least = 21;
  for (const Colour& colour : under) least = std::min(least, contrast(words, colour));
  return least;
}

/// Between the darkest and the lightest colour of a picture lie all others.
bool liesBetween(const CardColours& colours, Colour words) {
  const PaperPattern* paper = colours.patternOf(false);
  if (paper == nullptr || !paper->picture || paper->plate) return false;
  const std::vector<Colour> under = coloursUnder(colours, false);
  const auto lighter = [&](Colour colour) { return luminance(colour) >= luminance(words); };
  return std::ranges::any_of(under, lighter) && !std::ranges::all_of(under, lighter);
}

}  // namespace

WordsOn wordsOn(const CardColours& colours) {
  const PaperPattern* paper = colours.patternOf(false);
  const Colour inkColour = roleStyle(Role::Legend).colour;
  const std::vector<Colour> under =
      paper != nullptr && paper->plate ? std::vector{kWhite} : coloursUnder(colours, false);
  const double ink = liesBetween(colours, inkColour) ? 1 : leastContrast(inkColour, under);
  const double white = leastContrast(kWhite, under);
  return {white > ink, std::max(white, ink)};
}

}  // namespace creasewright
