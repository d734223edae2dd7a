#include "pages/printed_words.h"

#include "drawing/arrange.h"
#include "drawing/words_on.h"

namespace creasewright {
namespace {

Polygon plateUnder(const TextItem& text) {
  const double beyond = text.height / 2;
  const Polygon box = textBox(text, text.label.literal);
  const Point along = unit(box[1] - box[0]) * beyond;
  const Point up = unit(box[3] - box[0]) * beyond;
  return {box[0] - along - up, box[1] + along - up, box[2] + along + up, box[3] - along + up};
}

}  // namespace

Drawing printedWords(const std::vector<TextItem>& texts, const CardColours& colours) {
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
    out.texts.push_back(text);
    out.texts.back().reversed = white;
  }
  return out;
}

}  // namespace creasewright
