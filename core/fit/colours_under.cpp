#include "fit/colours_under.h"

#include "patterns/pattern.h"

namespace creasewright {

std::vector<Colour> coloursUnder(const CardColours& colours, bool behind) {
  const std::optional<Colour>& plain = behind ? colours.behind() : colours.face;
  const PaperPattern* pattern = colours.patternOf(behind);
  std::vector<Colour> under;
  if (pattern != nullptr) under = coloursOf(*pattern);
  const bool once = pattern != nullptr && pattern->picture && !pattern->picture->tiled;
  if (pattern == nullptr || once) under.push_back(plain.value_or(Colour{0xFF, 0xFF, 0xFF}));
  return under;
}

}  // namespace creasewright
