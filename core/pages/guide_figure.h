#pragma once

#include <optional>

#include "document/build.h"
#include "guide/guide.h"
#include "pages/figure_room.h"
#include "pages/folded_figure.h"

namespace creasewright {

/// The figure of a step, made to fit into `room`: lines and type keep their size on paper, the
/// drawing is scaled. The sheet with the readings at the sides they are measured from, the step's
/// cuts, waste and adhesive; or the folded piece with arrows that show where panels go. `step`
/// comes from makeGuide(built).
class StepFigure {
 public:
  /// Does what is the same for every room; what it is made of must outlive it.
  StepFigure(const BuiltDesign& built, const Step& step);
  [[nodiscard]] Drawing in(const FigureRoom& room) const;
  /// The same where no words speak of its letters.
  [[nodiscard]] Drawing withoutLetters(const FigureRoom& room) const;
  /// Of panels in the picture of a fold stage; in none of the others.
  [[nodiscard]] std::vector<PanelLetter> letters() const;

 private:
  const BuiltDesign& built_;
  const BuiltPiece& piece_;
  const Step& step_;
  std::optional<FoldedPicture> folded_;  ///< nothing for a sheet
};

/// One figure for one room.
Drawing guideFigure(const BuiltDesign& built, const Step& step, const FigureRoom& room = {});

/// The finished gift as it tells most, for the head of a guide.
Drawing finishedFigure(const BuiltDesign& built, const FigureRoom& room = {});

}  // namespace creasewright
