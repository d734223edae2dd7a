#include "folding/surfaces/upright.h"

#include <cmath>

#include "net/pose.h"

namespace creasewright {

Point3 uprightOf(const Piece& piece) {
  const Point3 out{0, 0, 1};
  if (piece.over) return out * -1;
  if (!piece.cavity) return out;
  const auto panel = piece.net.find(piece.cavity->panel);
  if (!panel) return out;
  const int axis = piece.cavity->axes[2];
  const Point3 height{axis == 0 ? 1.0 : 0.0, axis == 1 ? 1.0 : 0.0, axis == 2 ? 1.0 : 0.0};
  const Point3 up = pose(piece.net, 1.0)[static_cast<std::size_t>(*panel)].turn(height);
  return piece.cavity->through.empty() ? up : up * -1;
}

View frontView(View view, Point3 up) {
  const bool wall = std::abs(up.z) < 0.5;
  return {Angle::degrees(view.turn.degrees() + (wall ? 180 : 0)), view.tilt};
}

Sides sidesOf(Point3 up) {
  const Camera eye = camera(frontView({Angle(), Angle()}, up), up);
  return {eye.right, eye.towardsEye * -1};
}

}  // namespace creasewright
