#pragma once

#include <optional>
#include <vector>

#include "base/colour.h"
#include "folding/cavity/cavity.h"

namespace creasewright {

/// A solid shown with the box (the product).
struct Solid {
  std::vector<std::vector<Point3>> faces;  ///< convex, outward by the right-hand rule
  std::optional<Colour> colour = {};
};

// Solids stand on the plane z = 0 about the z axis; sizes in mm.
Solid boxSolid(double length, double width, double height);
/// A prism over a regular polygon of 24 corners that contains the circle.
Solid cylinderSolid(double diameter, double height);
/// Zones of a globe that is looked at alone.
inline constexpr int kGlobeZones = 12;

/// A globe of so many zones, and twice as many meridians, about the sphere's centre at half its
/// height.
Solid sphereSolid(double diameter, int zones = kGlobeZones);
/// A tube with a flat crimp at its top: round (24 corners) at the bottom, a line of `crimp` mm
/// along x at the top.
Solid tubeSolid(double crimp, double thickness, double height);

/// `solid` moved by `place`.
Solid placed(const Solid& solid, const Transform& place);

/// Where a product of the given size (mm along the product's length, width, height) rests in the
/// cavity: in the middle, on the side that `up` (a direction in panel 0's frame) points away from.
/// The transform takes a solid as above (length along x, width along y) into panel 0's frame.
Transform restingPlace(const Net& net, const Pose& folded, const Cavity& cavity,
                       const CavityBox& box, const CavitySize& product, Point3 up);

}  // namespace creasewright
