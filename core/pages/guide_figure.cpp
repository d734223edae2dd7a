#include "pages/guide_figure.h"

#include <algorithm>

#include "pages/design_picture.h"
#include "pages/folded_figure.h"
#include "pages/sheet_figure.h"
#include "pages/sheets_figure.h"

namespace creasewright {
namespace {

/// The design as it is before some of its extras are there.
BuiltDesign withoutExtras(const BuiltDesign& built, const std::vector<int>& without) {
  const auto missing = [&](int extra) {
    return std::ranges::find(without, extra) != without.end();
  };
  BuiltDesign now = built;
  std::vector<int> place;  // of each piece among those that are left
  int left = 0;
  for (const BuiltPiece& part : built.pieces)
    place.push_back(part.role && missing(part.role->extra) ? -1 : left++);
  std::erase_if(
      now.pieces, [&](const BuiltPiece& part) { return part.role && missing(part.role->extra); });
  std::erase_if(
      now.ribbons, [&](const RibbonNeed& ribbon) { return missing(ribbon.extra); });
  const auto follow = [&](FacePlace& face) {
    face.piece = place[static_cast<std::size_t>(face.piece)];
  };
  for (BuiltPiece& part : now.pieces)
    if (part.role) std::ranges::for_each(part.role->faces, follow);
  for (RibbonNeed& ribbon : now.ribbons)
    if (ribbon.shape && ribbon.shape->face) follow(*ribbon.shape->face);
  return now;
}

Drawing foldedPieces(const BuiltDesign& built, int extra, GiftState state) {
  PictureOptions options;
  options.folded = true;
  options.extra = extra;
  options.gift = std::move(state);
  return pictureOf(built, options);
}

/// The gift as the hand has it in a step: pieces that meet are half together, what goes round is
/// half on, and the box is open where something goes into it, before the product.
GiftState stateIn(const BuiltDesign& built, const Step& step) {
  GiftState state;
  if (step.code == StepCode::PutTogether) state.opening = kAjar;
  if (step.extra < 0) return state;
  constexpr double kHalfOn = 0.55;
  for (const BuiltPiece& piece : built.pieces) {
    if (!piece.role || piece.role->extra != step.extra) continue;
    const bool inside = piece.role->placing == Placing::Inside;
    if (!inside && piece.role->placing != Placing::Round) continue;
    state.extras.assign(built.design.extras.size(), 1);
    state.extras[static_cast<std::size_t>(step.extra)] = kHalfOn;
    if (inside) state.opening = kOpen;
    if (inside) state.product = -1;
  }
  return state;
}

}  // namespace

Drawing finishedFigure(const BuiltDesign& built, const FigureRoom& room) {
  GiftState state;
  state.opening = Gift(built).telling();
  return fittedInto(foldedPieces(built, kAllExtras, std::move(state)), room);
}

StepFigure::StepFigure(const BuiltDesign& built, const Step& step)
    : built_(built), piece_(built.pieces.at(static_cast<std::size_t>(step.piece))), step_(step) {
  switch (step.figure.kind) {
    case FigureKind::Sheet:
      break;
    case FigureKind::Folded:
      folded_ = foldedPicture(built, step,
                              step.figure.progressFrom > 0 ? productInBox(built) : std::nullopt);
      break;
    case FigureKind::Finished: {
      const BuiltDesign now = withoutExtras(built, step.figure.without);
      folded_ = {foldedPieces(now, step.extra, stateIn(now, step)), {}};
      break;
    }
  }
}

Drawing StepFigure::in(const FigureRoom& room) const {
  if (folded_) return foldedFigure(*folded_, room);
  const bool several = step_.code == StepCode::TrimBlank && !step_.pieces.empty();
  return several ? sheetsFigure(built_, step_.pieces, room) : sheetFigure(piece_, step_, room);
}

Drawing StepFigure::withoutLetters(const FigureRoom& room) const {
  return folded_ ? foldedFigure({folded_->drawing, folded_->ways}, room) : in(room);
}

std::vector<PanelLetter> StepFigure::letters() const {
  return folded_ ? folded_->letters : std::vector<PanelLetter>();
}

Drawing guideFigure(const BuiltDesign& built, const Step& step, const FigureRoom& room) {
  return StepFigure(built, step).in(room);
}

}  // namespace creasewright
