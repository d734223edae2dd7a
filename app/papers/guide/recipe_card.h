#pragma once

#include <optional>
#include <vector>

#include "papers/guide/guide_form.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

/// The head of a hand-out, `width` mm wide: the finished box, facts in one line, parts as a table,
/// what sticks, tools, cautions. Given a `height`, the picture stands above all that and grows
/// until the card fills most of it; else beside what is needed, where there is room. A photo stands
/// beside the picture.
Drawing recipeCard(const GuideWords& words, const BuiltDesign& built, double width,
                   std::optional<double> height = {}, GuideSize size = GuideSize::Standard,
                   const std::optional<GuidePhoto>& photo = {});

/// The same in two blocks, for type so large that one page does not hold it: what is made and
/// needed, filling `height` with its picture; the parts as a table or else the tools, cautions.
std::vector<Drawing> recipeInTwo(const GuideWords& words, const BuiltDesign& built, double width,
                                 double height, GuideSize size,
                                 const std::optional<GuidePhoto>& photo);

/// Its title, picture and parts alone: the head of a card of measures.
Drawing recipeHead(const GuideWords& words, const BuiltDesign& built, double width);

}  // namespace creasewright
