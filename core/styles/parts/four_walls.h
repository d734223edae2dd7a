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
/// front; front and back have the edges of uprightWall(). Back, left and seam fold in the stage
/// before `stage`, in which the right wall brings the seam round into the front.
/// `side` is the shape of the right and the left wall; it needs the edges `bottom`, `right`, `left`
/// of uprightWall().
void addFourWalls(NetBuilder& net, const FourWalls& walls, const Shape& side, int stage);
/// With plain sides.
void addFourWalls(NetBuilder& net, const FourWalls& walls, int stage);

/// How the bottom panel and its glue tab fold, and the panel the tab is glued to.
struct BottomPanel {
  HingeFold fold, tab;
  std::string_view back = "back";
};

/// Adds `front/bottom` with its `tab` glued inside the back. `caliper` mm are left free at the
/// sides.
void addBottomPanel(NetBuilder& net, const FourWalls& walls, double caliper,
                    const BottomPanel& bottom);

/// Closes the bottom: `left/bottom-flap` and `right/bottom-flap` turn in first, then `front/bottom`
/// over them, its `tab` glued inside the back. `caliper` mm are left free at the sides.
void addGluedBottom(NetBuilder& net, const FourWalls& walls, double caliper, int flapStage,
                    int bottomStage);

}  // namespace creasewright
