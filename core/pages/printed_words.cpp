#include "pages/printed_words.h"

#include "drawing/set_words.h"
#include "drawing/words_on.h"

namespace creasewright {
namespace {

Polygon plateUnder(const TextItem& text) {
  return wordsArea(text, text.label.literal, text.height / 2);
}

}  // namespace

Drawing printedWords(const std::vector<TextItem>& texts, const CardColours& colours, bool stamped) {
  Drawing out;
  const PaperPattern* paper = colours.patternOf(false);
  const bool white = wordsOn(colours).white;
  for (const TextItem& text : texts) {
    if (paper != nullptr && paper->plate)
      out.paths.push_back({.role = Role::Face,
                           .rings = {plateUnder(text)},
                           .closed = true,
                           .filled = true,
                           .colour = Colour{0xFF, 0xFF, 0xFF},
                           .printed = true});
    if (stamped) continue;
    out.texts.push_back(text);
    out.texts.back().reversed = white;
  }
  return out;
}

}  // namespace creasewright
