#pragma once

#include <vector>

#include "geometry/transform.h"
#include "guide/guide.h"

namespace creasewright::testing {

/// A sheet worked by hand: knows only what the steps of a guide say, nothing of nets.
class PaperHand {
 public:
  /// Does one step of a guide.
  void perform(const Step& step);
  /// The blank of this size is in the hand.
  void trim(Length width, Length height);

  [[nodiscard]] double width() const { return width_; }
  [[nodiscard]] double height() const { return height_; }
  [[nodiscard]] const std::vector<Segment>& scores() const { return scores_; }
  [[nodiscard]] const std::vector<Polyline>& cuts() const { return cuts_; }
  /// Whether the line lies on scores made so far, within `tolerance` mm.
  [[nodiscard]] bool isScored(const Segment& line, double tolerance) const;
  /// How far full scores lie from `side`, ascending (mm).
  [[nodiscard]] std::vector<double> fullScoresFrom(SheetSide side) const;

  /// Lays out the parts between cuts and folds: what hangs together with the part at `hold` is the
  /// piece, the rest falls off. `folds` are all folds to come.
  void release(Point hold, const std::vector<Fold>& folds);
  struct Part {
    Polygon outline;
    Transform placed;  ///< blank to space, where the held part stays in the blank's place
  };
  [[nodiscard]] const std::vector<Part>& parts() const { return parts_; }
  [[nodiscard]] double cardArea() const { return cardArea_; }
  [[nodiscard]] const std::vector<Polygon>& offcuts() const { return offcuts_; }  ///< at the rim
  /// The part of the piece at `p`, -1 when there is none.
  [[nodiscard]] int partAt(Point p) const;

 private:
  struct Hinge {
    int from;
    int to;
    Segment line;  ///< `to` lies left of it
    int fold;
  };
  void score(const ScoreSetup& setup);
  void foldParts();

  double width_ = 0;
  double height_ = 0;
  std::vector<Segment> scores_;
  std::vector<std::pair<SheetSide, double>> fullSides_;
  std::vector<Polyline> cuts_;
  std::vector<Fold> folds_;
  std::vector<bool> made_;
  std::vector<Part> parts_;
  std::vector<Hinge> hinges_;
  double cardArea_ = 0;
  std::vector<Polygon> offcuts_;
};

}  // namespace creasewright::testing
