#pragma once

#include <span>

#include "document/build.h"
#include "pages/panel_look.h"

namespace creasewright {

/// What a panel of a picture belongs to.
struct PanelOwner {
  int piece = -1;  ///< of BuiltDesign::pieces; -1 = ribbon
  int panel = 0;   ///< of that piece's net
};

/// Folded nets as they are drawn together, in the frame of the first panel's piece.
struct Dressed {
  Net net;
  Pose pose;
  std::vector<PanelLook> looks;         ///< by panel
  std::vector<PanelOwner> owners;       ///< by panel
  std::vector<Inscription> words = {};  ///< on outsides, turned in the frames of their panels
};

/// How far each of the design's extras is on its way to its place, by index: 0 not there yet, 1 in
/// its place; none = all are there.
using ExtrasOnWay = std::span<const double>;

/// Puts folded pieces into one picture.
class Dressing {
 public:
  explicit Dressing(const BuiltDesign& built, ExtrasOnWay extras = {})
      : built_(built), extras_(extras) {}

  /// A piece in a pose of its own, its panel 0 at `place`.
  void add(const BuiltPiece& piece, const Transform& place, const Pose& pose);
  /// What the design's extras put onto its faces, and what lies on that.
  void addOnFaces(const BuiltPiece& piece, const Transform& place, const Pose& pose);
  /// A ribbon round the box and bows where ribbons cross; `place` is that of the first piece.
  void addRibbons(const Transform& place);
  /// What joins the halves of one blank, which were both added: their layers follow from that.
  void addMatesOfHalves();

  /// 0 not there yet .. 1 in its place.
  [[nodiscard]] double onWay(int extra) const;
  [[nodiscard]] Dressed take() { return std::move(out_); }

 private:
  void addFoam(const BuiltPiece& layer, const Transform& place);
  void addRibbonPanels(int extra, std::size_t first);
  const BuiltDesign& built_;
  ExtrasOnWay extras_;
  Dressed out_;
};

/// A piece by itself in a pose of its own. A patterned paper runs on over its creases.
Dressed undressed(const BuiltDesign& built, const BuiltPiece& piece, Pose pose);

/// A folded piece by itself with what the design's extras put onto its faces, and with the pieces
/// glued to it. Its own panels come first.
Dressed dressed(const BuiltDesign& built, const BuiltPiece& piece);

}  // namespace creasewright
