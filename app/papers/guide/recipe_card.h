#pragma once

#include "papers/guide/guide_words.h"

namespace creasewright {

/// The head of a hand-out, `width` mm wide: the finished box, facts in one line, parts as a table,
/// what sticks, tools, cautions. With a `large` picture it fills most of a page.
Drawing recipeCard(const GuideWords& words, const BuiltDesign& built, double width, bool large);

}  // namespace creasewright
