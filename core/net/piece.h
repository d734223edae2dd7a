#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "geometry/transform.h"
#include "net/net.h"
#include "units/length.h"

namespace creasewright {

/// The free space inside a folded piece, measured along the product's axes. `panel` gives the
/// frame; `axes[i]` says which axis of that frame (0 x, 1 y, 2 z) is the product's length, width,
/// height.
struct Cavity {
  std::string panel;
  Point3 seed;  ///< a point inside, in the panel's frame
  std::array<int, 3> axes{0, 1, 2};
  Point3 low{-1e4, -1e4, -1e4};  ///< where the space ends on sides without a panel
  Point3 high{1e4, 1e4, 1e4};
  std::vector<std::string> through = {};  ///< panels whose openings it goes through, from outside
  bool round = false;  ///< those openings are round: a round product fills them to their bounds
};

/// What a piece's cavity must hold besides or instead of the product: the outside of another piece.
struct GoesOver {
  std::string piece;
  std::array<Length, 3> ease;                   ///< by Axis, both sides together
  std::array<bool, 3> axes{true, true, false};  ///< which sizes must go over
};

/// What holds a piece to another piece of its design.
enum class Hold {
  Glue,  ///< adhesive between two panels
  Slot,  ///< slots pushed into slots
  Loose  ///< put on, in or round by hand, and meant to come off again
};

/// How a piece is held to another one, or that it is loose.
struct Holding {
  Hold by = Hold::Loose;
  std::string to;            ///< name of the other piece
  std::string panel = {};    ///< Glue: of this piece, it takes the adhesive
  std::string onto = {};     ///< Glue: of the other piece
  Face face = Face::Inside;  ///< Glue: face of `onto` that the panel lies against
  /// This piece's panel 0 in the frame of the other's panel 0, both folded; mm.
  std::optional<Transform> place = {};
};

/// One card piece of a design.
struct Piece {
  std::string name;  ///< `tray`, `band`, `box`
  Net net;
  std::optional<Cavity> cavity;  ///< for the product, unless `over` is set
  std::optional<GoesOver> over = {};
  int count = 1;                     ///< how many of it one design takes
  std::optional<Holding> held = {};  ///< nothing for a piece that others are held to
};

}  // namespace creasewright
