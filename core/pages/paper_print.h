#pragma once

#include "drawing/drawing.h"
#include "fit/card_colours.h"
#include "geometry/plane_map.h"
#include "geometry/region.h"

namespace creasewright {

/// Whether a paper is a picture that is there once: beside it the card has its own colour.
bool liesOnce(const PaperPattern* paper);

/// Whether a side of the card has a colour or a pattern of its own; a back without one is as the
/// face, and is not printed.
bool isPrinted(const CardColours& colours, bool behind);

/// What a picture paper shows; `paper` maps its millimetres as for patternOn. The picture's middle
/// lies at the paper's origin, but for its shift. Nothing: the paper has no picture.
std::optional<PictureFill> pictureOn(const PaperPattern& paper, const PlaneMap& place);

/// An area as it is printed with a side of the card: its colour, then its pattern or its picture.
/// Nothing where that side is plain. All of it is PathItem::printed.
std::vector<PathItem> printOn(const Region& outline, const CardColours& colours, bool behind,
                              const PlaneMap& paper);

}  // namespace creasewright
