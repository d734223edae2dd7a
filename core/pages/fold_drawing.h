#pragma once

#include <span>
#include <vector>

#include "drawing/drawing.h"
#include "fit/card_colours.h"
#include "folding/surfaces/scene.h"

namespace creasewright {

/// What a facet belongs to, for its colour.
Surface surfaceOf(const Facet& facet);

/// The card's own colour where a facet shows it; `colours` by panel, panels beyond are plain.
std::optional<Colour> ownColour(const Facet& facet, std::span<const CardColours> colours);

/// Which edges lie on card so dark that ink would not show on it: those are drawn light.
std::vector<bool> edgesOnDark(const FoldPicture& picture, std::span<const CardColours> colours);
inline constexpr Colour kLightEdge{0xF1, 0xED, 0xE4};

/// A folded picture as a drawing with `margin` mm around it: lit faces, then visible edges.
Drawing drawFold(const FoldPicture& picture, std::span<const CardColours> colours,
                 double margin = 4);

}  // namespace creasewright
