#pragma once

#include <optional>

#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

/// The head of a hand-out, `width` mm wide: the finished box, facts in one line, parts as a table,
/// what sticks, tools, cautions. Given a `height`, the picture stands above all that and grows
/// until the card fills most of it.
Drawing recipeCard(const GuideWords& words, const BuiltDesign& built, double width,
                   std::optional<double> height = {}, GuideSize size = GuideSize::Standard);

/// Its title, picture and parts alone: the head of a card of measures.
Drawing recipeHead(const GuideWords& words, const BuiltDesign& built, double width);

}  // namespace creasewright
