#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "extras/extra.h"
#include "fit/fit.h"
#include "folding/cavity/cavity.h"
#include "geometry/region.h"
#include "net/pose.h"
#include "styles/style.h"

namespace creasewright {

/// A piece of the box, folded.
struct HostPiece {
  const Piece* part = nullptr;
  const Pose* folded = nullptr;
  CavityBox cavity;  ///< in the frame of the cavity's panel; empty when it has none
  std::optional<Transform> place = {};  ///< its panel 0 in the frame of the box's first piece
};

/// What goes once round the finished box over its faces: a band, a sleeve, a ribbon.
struct WrapRound {
  std::string kind;      ///< of the extra
  std::size_t axis = 0;  ///< of the product, square to the way round
  double width = 0;      ///< mm, about the middle of the box
};

/// A place on a face that an extra has taken already.
struct TakenPlace {
  std::string kind;  ///< of the extra
  int piece = 0;
  int panel = 0;
  Polygon outline;  ///< in the panel's frame
};

/// The box about the finished box: its middle, its axes along the product's length, width and
/// height, and its sizes (mm), in the frame of the first piece's panel 0.
struct OutsideBox {
  Point3 centre;
  std::array<Point3, 3> axes;
  std::array<double, 3> sizes{};
  Point3 up;  ///< where it stands upright
};

/// What already goes round the box, of card.
struct WrapBody {
  std::size_t axis = 0;           ///< of the product, square to the way round
  std::array<double, 3> sizes{};  ///< mm outside, along the product's axes
};

/// What stands out from a face of the box: a label, its layers and foam.
struct Raised {
  std::string kind;  ///< of the extra
  Point3 out;        ///< of the face, in the frame of the host's first panel 0
  std::vector<Point3> corners;
  double height = 0;  ///< mm
  bool foam = false;
  bool bow = false;
  bool onWrap = false;  ///< from what goes round the box, not from the box
};

/// The finished box that extras follow.
struct Host {
  std::vector<HostPiece> pieces;
  std::optional<Product> product;
  Ease ease = Ease::Easy;
  Workbench bench;      ///< caliper of the box's card
  Length onFaces = {};  ///< thickness of what is glued onto the outside faces
  std::vector<WrapRound> wraps = {};
  std::vector<TakenPlace> taken = {};
  std::vector<WrapBody> under = {};  ///< what goes round below
  std::vector<Raised> raised = {};
  std::optional<OutsideBox> box = {};  ///< of the box, where the host is an extra
  Point3 side = {};                    ///< out of that face of the box; 0 = any
  bool seenOnly = false;               ///< what is covered is no place
  Point crossing = {};                 ///< mm across and up of the side where a ribbon crosses

  /// Card and tools an extra is made with.
  [[nodiscard]] Workbench benchOf(const Extra& extra) const {
    return {extra.card.caliper, bench.grid};
  }
};

/// Of all pieces together as they stand closed, in the frame of the first. Nothing when that has no
/// cavity.
std::optional<OutsideBox> outsideOf(const Host& host);

/// The same over what goes round it below (Host::under), which lies about the same middle.
OutsideBox overUnder(const Host& host, OutsideBox box);

/// What stands out from faces under a strip `width` mm wide about the middle, square to `axis`.
std::vector<const Raised*> raisedUnder(const Host& host, const OutsideBox& box, std::size_t axis,
                                       double width);
/// The box over those of them on the box, or those on wraps, higher on their sides alone.
OutsideBox overRaised(const Host& host, OutsideBox box, std::size_t axis, double width,
                      bool onWraps = false);

/// An outside face that shows, in the frame of its panel.
struct HostFace {
  int piece = 0;
  int panel = 0;
  Area area;        ///< without openings
  Point middle;     ///< of the area's bounds in the upright frame
  Angle upright;    ///< turns the frame of a piece laid upright onto the face into the panel's
  double size = 0;  ///< mm2
};

/// Every face that shows on the finished box, the largest first; those a lid or sleeve goes over
/// are none.
std::vector<HostFace> facesOf(const Host& host);
/// The same and those that a sleeve leaves open, such as the front of a drawer.
std::vector<HostFace> openFacesOf(const Host& host);

/// A panel's face, whether it shows or not; upright as it stands.
HostFace faceAt(const Host& host, int piece, int panel);

/// Whether a face looks at somebody in front of the box.
bool isSeen(const Host& host, const HostFace& face);
/// Out of a face: of an extra in the frame of the box, of the box's own piece in that piece's.
Point3 outOf(const Host& host, const HostFace& face);

/// A product axis in the frame of a cavity's panel, by Cavity::axes.
Point3 unitAlong(int axis);

/// `piece:panel`.
std::string faceName(const Piece& piece, int panel);
std::string faceName(const Host& host, const HostFace& face);

/// A place on a face of the box: the piece's own frame in the frame of a panel.
struct FacePlace {
  int piece = 0;  ///< of Host::pieces
  int panel = 0;
  Transform place;
};

/// Places a piece that was drawn upright about its own middle onto a face, `lift` mm off the middle
/// of the card on the outside.
FacePlace placeOn(const HostFace& face, Point middle, double lift);

/// The same on the inside: the piece was drawn as it is seen from within.
FacePlace placeInside(const HostFace& face, Point middle, double lift);

/// The card of a face without its openings, in the panel's frame.
Region cardOf(const HostFace& face);

/// A shape in the panel's frame as it stands upright about the middle of the face, and back.
Polygon laidUpright(const HostFace& face, const Polygon& shape);
Polygon inPanel(const HostFace& face, const Polygon& upright);

}  // namespace creasewright
