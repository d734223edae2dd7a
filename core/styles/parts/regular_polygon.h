#pragma once

#include "net/net_builder.h"

namespace creasewright {

/// A regular polygon standing on its first edge from (0, 0) to (side, 0); edges `edge-1` ..
/// `edge-n`, counter-clockwise.
Shape regularPolygon(int sides, double side);

/// The same shape turned so that a named straight edge lies on the x axis from (0, 0).
Shape restedOn(const Shape& shape, std::string_view edge);

/// Distance from the middle to an edge, for an edge length; and back (elementary geometry).
double apothemOf(int sides, double side);
double sideOf(int sides, double apothem);

/// Distance from the middle to the edges of the smallest regular polygon, standing on its first
/// edge, that holds a rectangle of `length` along that edge and `width` across it, both about the
/// middle: the largest of |cos u| length/2 + |sin u| width/2 over the edges' outward directions u.
double apothemAround(int sides, double length, double width);

}  // namespace creasewright
