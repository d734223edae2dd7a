#pragma once

#include "net/net_builder.h"

namespace creasewright {

/// Four walls round a rectangle with a glued seam; mm.
struct FourWalls {
  double length;  ///< of front and back
  double width;   ///< of the two sides
  double height;
  double seam;
};

/// `width` x `height` with edges `bottom`, `right`, `top`, `left`.
Shape uprightWall(double width, double height);

/// Adds the root `front` and to its right `right`, `back`, `left` with the `seam` glued inside the
/// front; all have the edges of uprightWall() and fold in `stage`.
void addFourWalls(NetBuilder& net, const FourWalls& walls, int stage);

/// Closes the bottom: `left/bottom-flap` and `right/bottom-flap` turn in first, then `front/bottom`
/// over them, its `tab` glued inside the back. `caliper` mm are left free at the sides.
void addGluedBottom(NetBuilder& net, const FourWalls& walls, double caliper, int flapStage,
                    int bottomStage);

}  // namespace creasewright
