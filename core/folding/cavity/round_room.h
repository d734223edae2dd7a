#pragma once

#include <optional>

#include "folding/cavity/cavity.h"

namespace creasewright {

/// A round product standing about its height, mm.
struct RoundSize {
  double across = 0;
  double height = 0;
  bool ball = false;  ///< else a cylinder
};

/// Where a round product stands, in the frame of the cavity's panel.
struct RoundRoom {
  RoundSize size;
  Point3 foot;   ///< the middle of its lower end
  Point3 along;  ///< from there to the middle of its upper end
};

/// A place for a round product in the free space of a folded piece, or nothing where none is found.
/// It is looked for about the cavity's seed and about the middle of `free`, the cuboid that
/// cavityBox() finds, its foot there or on card. Card counts as there; a cylinder is held clear of
/// what lies within its height, a ball of all card.
std::optional<RoundRoom> roundRoom(const Net& net, const Pose& folded, const Cavity& cavity,
                                   double caliper, const RoundSize& size, const CavityBox& free);

}  // namespace creasewright
