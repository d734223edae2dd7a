#pragma once

#include <memory>
#include <vector>

#include "base/once.h"
#include "pages/gift.h"

namespace creasewright {

/// What the hand does once pieces are scored and cut.
enum class StopCode {
  Fold,        ///< `stage` of `piece`
  GluePieces,  ///< `piece` onto another one, both flat
  GlueOn,      ///< what belongs to `extra` onto `piece`, which lies flat
  LayInside,   ///< `extra` into the box, under or round the product
  PutIn,       ///< the product
  Close,       ///< the pieces of the box meet
  AddExtra     ///< `extra` goes round the box, or onto what does
};

/// One thing that the hand does.
struct StripStop {
  StopCode code = StopCode::Fold;
  int piece = -1;  ///< of BuiltDesign::pieces, in whose picture it is done; -1 = the gift's
  int stage = 0;   ///< of its net, 1 = first
  int extra = -1;  ///< of Design::extras
};

/// All of them in the order in which the guide tells them (makingSteps).
std::vector<StripStop> giftStops(const BuiltDesign& built);

/// The way from flat until the gift is finished, stop after stop, and what is seen there: the piece
/// in the hand with what is on it, and once all pieces of the box are folded the gift.
class GiftStrip {
 public:
  enum class Of {
    Gift,
    Piece  ///< the fold stages of one piece
  };
  /// The strip under the picture of a piece: a piece of an extra is shown alone. `built` must
  /// outlive it.
  GiftStrip(const BuiltDesign& built, int piece);
  GiftStrip(const BuiltDesign& built, int piece, Of of);

  [[nodiscard]] const std::vector<StripStop>& stops() const { return stops_; }
  [[nodiscard]] double end() const { return static_cast<double>(stops_.size()); }
  /// When so many of the stops are done: 0 flat, 1.5 in the middle of the second one; at the end
  /// the finished gift, open by `opening` (kClosed .. kOpen).
  [[nodiscard]] GiftScene at(double done, double opening) const;
  /// How many stops are done once its piece is folded by a share, 0 to 1.
  [[nodiscard]] double doneWhenFolded(double progress) const;

 private:
  [[nodiscard]] GiftScene alone(double progress) const;
  [[nodiscard]] const Gift& gift() const;
  [[nodiscard]] MakingState stateAfter(double done) const;
  [[nodiscard]] int lastFold() const;

  const BuiltDesign& built_;
  int piece_;
  Of of_;
  std::vector<StripStop> stops_;
  Once<std::shared_ptr<const Gift>> gift_;
};

}  // namespace creasewright
