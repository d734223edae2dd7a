#pragma once

#include "net/piece.h"
#include "net/pose.h"

namespace creasewright {

/// Size along the product's length, width and height (mm).
struct CavitySize {
  double length = 0;
  double width = 0;
  double height = 0;
};

/// The free cuboid in the frame of the cavity's panel (mm).
struct CavityBox {
  Point3 low;
  Point3 high;
};

/// The cuboid about the cavity's seed, along the axes of its panel, that meets no card: panels of
/// the folded pose count with half a caliper on either side, and flaps that are glued, tucked or
/// resting with the whole caliper by which they lie beside their target. Of all such cuboids the
/// one with the largest volume; when `wanted` sizes are given, first of all one that lacks as
/// little of them as can be (a long, slim product may need another space than the roomiest). Exact
/// where card lies along the axes; slanting panels count with the point of theirs that is in the
/// way first, so the cuboid is never too large. Openings count as card unless the
/// cavity goes through them. Empty (low = high = seed)
/// when the panel does not exist or the seed lies in card.
CavityBox cavityBox(const Net& net, const Pose& folded, const Cavity& cavity, double caliper,
                    const CavitySize& wanted = {});

/// The size of a box along the product's axes.
CavitySize sizeAlong(const Cavity& cavity, const CavityBox& box);

/// The size of cavityBox() along the product's axes.
CavitySize measureCavity(const Net& net, const Pose& folded, const Cavity& cavity, double caliper,
                         const CavitySize& wanted = {});

}  // namespace creasewright
