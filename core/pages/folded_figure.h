#pragma once

#include "document/build.h"
#include "guide/guide.h"
#include "pages/figure_room.h"
#include "pages/fold_letters.h"
#include "pages/product_in_box.h"

namespace creasewright {

/// A step at the folded piece before it is fitted into a room, which takes most of the work.
struct FoldedPicture {
  Drawing drawing;
  std::vector<Polyline> ways;  ///< on the drawing
  std::vector<PanelLetter> letters = {};
};

/// The figure of a step at the folded piece in its colours and patterns, with the product where it
/// is by then: before its way in as it is put in, else in its place.
FoldedPicture foldedPicture(const BuiltDesign& built, const Step& step,
                            const std::optional<ProductInBox>& product);

/// The same with arrows that show where panels go and the letters of panels, as large as a room
/// takes.
Drawing foldedFigure(const FoldedPicture& picture, const FigureRoom& room);

/// The share of a fold step's way at which its figure shows the box: most of it, or earlier where
/// card bends and stiff panels would be shown in one another.
double shownShare(const BuiltPiece& piece, const Step& step);

}  // namespace creasewright
