#pragma once

#include <vector>

#include "drawing/drawing.h"

namespace creasewright {

/// A run of words that is set in one straight line.
struct WordsRun {
  std::string words;  ///< UTF-8
  /// Its millimetres on the drawing: from the point that it is anchored at, x along the line and y
  /// up.
  PlaneMap place;
  Anchor anchor = Anchor::Left;
  double longest = 0;  ///< mm: what it was measured to take, where its face was chosen; else 0
};

/// How a text stands on its drawing: in one run, or letter by letter where it is bent.
std::vector<WordsRun> wordsRuns(const TextItem& text, const std::string& words);

/// The place on a drawing that words take, `beyond` mm of their plane farther on all sides.
Polygon wordsArea(const TextItem& text, const std::string& words, double beyond = 0);

/// A text under an affine map of its drawing.
void carry(TextItem& text, const PlaneMap& map);

/// Words as they are written on a net, in the frame that `at` and `turnDegrees` are told in.
TextItem textOf(const Inscription& words, Point at, double turnDegrees);

}  // namespace creasewright
