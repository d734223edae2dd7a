#pragma once

#include <optional>
#include <vector>

#include "base/once.h"
#include "document/build.h"
#include "folding/surfaces/ground_shadow.h"
#include "folding/surfaces/scene.h"
#include "guide/putting_in.h"
#include "pages/dressing.h"
#include "pages/opening.h"
#include "pages/product_in_box.h"

namespace creasewright {

/// What of a gift a picture shows.
struct GiftState {
  double opening = kClosed;         ///< kClosed .. kOpen
  double product = 1;               ///< 0 still outside .. 1 in its place; below 0 none
  std::vector<double> extras = {};  ///< ExtrasOnWay; none = all in their places
  bool bottom = false;              ///< opened, it shows of what kind its bottom is too
};

/// How far the making of a gift has come.
struct MakingState {
  std::vector<double> folded;  ///< by piece, 0 flat .. 1
  std::vector<double> glued;   ///< by piece: on its way onto the one that it is glued to, 0 .. 1
  std::vector<double> extras;  ///< ExtrasOnWay
  double product = 1;          ///< as in GiftState
  double opening = kClosed;    ///< as in GiftState, once all pieces are folded
};

/// A gift as it is drawn.
struct GiftScene {
  Dressed shown;
  std::vector<Solid> solids;
  Point3 up;
  bool turned = false;  ///< it opens at its back, which is then looked at
};

/// A view of a scene from its front, or from its back where that is looked at.
View viewOf(const GiftScene& scene, const View& view);

/// The finished gift: the pieces of a design as they stand together, closed or opened as makers
/// open them, with what its extras add and the product in it. Loose pieces come off along their
/// way, what goes round slides off along the box, untied ribbons are left out, then the folds that
/// close the box are undone.
class Gift {
 public:
  /// `built` must outlive it.
  explicit Gift(const BuiltDesign& built);

  [[nodiscard]] GiftScene at(const GiftState& state) const;
  /// A piece in the hand while it is folded, with what is on it and in it by then.
  [[nodiscard]] GiftScene making(int piece, const MakingState& state) const;
  /// Whether a piece is part of it; else it is shown beside it.
  [[nodiscard]] bool holds(const BuiltPiece& piece) const;
  /// Whether opening it changes anything.
  [[nodiscard]] bool opens() const;
  /// How far open it tells most: ajar where a lid or a sleeve would hide what is in it, or what
  /// goes round would hide the product of an open box; closed where something holds it closed.
  [[nodiscard]] double telling() const;

 private:
  /// A piece of the box as it stands.
  struct Stood {
    const BuiltPiece* piece;
    Transform place;  ///< in the frame of the root
    Pose pose;
  };
  [[nodiscard]] const BuiltPiece* ownCalled(const std::string& name) const;
  [[nodiscard]] Transform standing(const BuiltPiece& piece, double lifted) const;
  [[nodiscard]] Transform offBy(const BuiltPiece& piece, const BuiltPiece& other,
                                double share) const;
  [[nodiscard]] Point3 wayBy(const BuiltPiece& piece, const BuiltPiece& other) const;
  [[nodiscard]] Transform slidOff(const BuiltPiece& wrap, double share,
                                  const std::vector<Stood>& stood) const;
  [[nodiscard]] std::vector<Stood> stoodAt(double opening, bool bottom, bool turned) const;
  [[nodiscard]] Pose openedBy(const BuiltPiece& piece, double share, bool bottom,
                              bool turned) const;
  [[nodiscard]] bool isSeenWithin(bool turned) const;
  [[nodiscard]] bool opensAtTheBack() const;
  void addWraps(double opening, const std::vector<Stood>& stood, Dressing& out) const;
  double addInside(const Stood& holder, Dressing& out) const;
  [[nodiscard]] std::vector<Stood> slottedTo(const BuiltPiece& part) const;
  void addHanging(const Transform& first, Dressing& out) const;
  [[nodiscard]] std::vector<Solid> productIn(const Stood& holder, const GiftState& state,
                                             double opening, double raised) const;
  [[nodiscard]] Pose poseInMaking(int piece, const MakingState& state) const;
  void addInMaking(int piece, const Transform& place, const MakingState& state, Dressing& out,
                   GiftScene& scene) const;
  [[nodiscard]] Point3 outOfEnd(const Stood& holder, double opening) const;
  [[nodiscard]] bool isLoose() const;
  [[nodiscard]] bool isTied() const;
  [[nodiscard]] bool slidesThrough() const;
  [[nodiscard]] const std::optional<PuttingIn>& putting() const;

  const BuiltDesign& built_;
  std::vector<const BuiltPiece*> own_;    ///< those that stand together, the root first
  std::vector<const BuiltPiece*> wraps_;  ///< what goes round them, the outermost first
  Point3 up_{0, 0, 1};                    ///< in the frame of the root
  std::optional<ProductInBox> product_;
  Once<std::optional<PuttingIn>> putting_;
  Once<bool> atTheBack_;
};

/// Its picture from a view, whose front is that of the gift.
FoldPicture pictureOf(const GiftScene& scene, const View& view);

/// And the shadow under it.
GroundShadow shadowOf(const GiftScene& scene, const View& view);

/// Whether more than a sliver of the product is seen.
bool productShows(const FoldPicture& picture);

}  // namespace creasewright
