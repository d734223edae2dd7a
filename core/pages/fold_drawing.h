#pragma once

#include <span>
#include <vector>

#include "drawing/drawing.h"
#include "folding/surfaces/scene.h"
#include "pages/panel_look.h"

namespace creasewright {

/// What a facet belongs to, for its colour.
Surface surfaceOf(const Facet& facet);

/// The card's own colour where a facet shows it, the mean of a pattern's; the product's; `looks` by
/// panel, panels beyond are plain.
std::optional<Colour> ownColour(const Facet& facet, const FoldPicture& picture,
                                std::span<const PanelLook> looks);

/// The pattern that a facet shows, and its paper in the picture.
struct SeenPattern {
  const PaperPattern* paper = nullptr;  ///< nullptr = it shows none
  PlaneMap place;
};
SeenPattern patternSeen(const Facet& facet, const FoldPicture& picture,
                        std::span<const PanelLook> looks);

/// How an edge is drawn so that it shows on what lies beside it.
enum class EdgeTone {
  Ink,
  Light,     ///< on card so dark that ink would not show
  CasedInk,  ///< on a pattern of dark and light: in ink on a light line that is wider
};
std::vector<EdgeTone> edgeTones(const FoldPicture& picture, std::span<const PanelLook> looks);
inline constexpr Colour kLightEdge{0xF1, 0xED, 0xE4};
inline constexpr double kCasing = 2.6;  ///< widths of an edge

/// Round a folded picture, mm at its own scale.
inline constexpr double kFoldedMargin = 4;

/// A folded picture as a drawing with `margin` mm around it: lit faces with their patterns, the
/// words on them (as in Dressed::words), then visible edges.
Drawing drawFold(const FoldPicture& picture, std::span<const PanelLook> looks,
                 double margin = kFoldedMargin, std::span<const Inscription> words = {});

}  // namespace creasewright
