#include "pages/guide_figure.h"

#include <algorithm>

#include "pages/design_picture.h"
#include "pages/folded_figure.h"
#include "pages/sheet_figure.h"

namespace creasewright {
namespace {

/// The design as it is before some of its extras are there.
BuiltDesign withoutExtras(const BuiltDesign& built, const std::vector<int>& without) {
  const auto missing = [&](int extra) {
    return std::ranges::find(without, extra) != without.end();
  };
  BuiltDesign now = built;
  std::erase_if(
      now.pieces, [&](const BuiltPiece& part) { return part.role && missing(part.role->extra); });
  std::erase_if(now.ribbons, [&](const RibbonNeed& ribbon) { return missing(ribbon.extra); });
  return now;
}

Drawing foldedPieces(const BuiltDesign& built, int extra, const FigureRoom& room) {
  PictureOptions options;
  options.folded = true;
  options.extra = extra;
  return fittedInto(pictureOf(built, options), room);
}

}  // namespace

Drawing finishedFigure(const BuiltDesign& built, const FigureRoom& room) {
  return foldedPieces(built, kAllExtras, room);
}

Drawing guideFigure(const BuiltDesign& built, const Step& step, const FigureRoom& room) {
  const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(step.piece));
  switch (step.figure.kind) {
    case FigureKind::Sheet:
      return sheetFigure(piece, step, room);
    case FigureKind::Folded:
      return foldedFigure(piece, step, room,
                          step.figure.progressFrom > 0 ? productInBox(built) : std::nullopt);
    case FigureKind::Finished:
      return foldedPieces(withoutExtras(built, step.figure.without), step.extra, room);
  }
  return {};
}

}  // namespace creasewright
