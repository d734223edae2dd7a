#pragma once

#include "geometry/polygon.h"

namespace creasewright {

/// Outlines that are cut, counter-clockwise round (0, 0), `width` by `height` mm.
Polygon cutRectangle(double width, double height, double radius);
Polygon cutHeart(double width, double height);
/// Five points.
Polygon cutStar(double width, double height);
/// An oval with a wavy edge of so many bows.
Polygon cutScallop(double width, double height, int bows);
/// A rectangle whose upper side is half round, or half an oval where it is lower than that.
Polygon cutArch(double width, double height);
/// A slot with round ends and a larger round hole in its middle.
Polygon cutHangingSlot(double width, double height, double hole);

Polygon moved(Polygon shape, Point by);

}  // namespace creasewright
