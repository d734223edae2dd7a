#pragma once

#include "document/build.h"
#include "guide/guide.h"
#include "pages/figure_room.h"
#include "pages/product_in_box.h"

namespace creasewright {

/// The figure of a step at the folded piece, with arrows that show where panels go, and the product
/// where it is by then: before its way in as it is put in, else in its place.
Drawing foldedFigure(const BuiltPiece& piece, const Step& step, const FigureRoom& room,
                     const std::optional<ProductInBox>& product);

/// The share of a fold step's way at which its figure shows the box: most of it, or earlier where
/// card bends and stiff panels would be shown in one another.
double shownShare(const BuiltPiece& piece, const Step& step);

}  // namespace creasewright
