#include "document/paper_way.h"

#include <cmath>

#include "folding/surfaces/upright.h"
#include "net/pose.h"

namespace creasewright {
namespace {

constexpr double kInPlane = 0.5;  // of a unit vector: the panel stands

Point inPlane(Point3 v) { return {v.x, v.y}; }

/// `up` as the box stands, in the frame of a panel.
Point wayUp(Point3 up) {
  const Point wall = inPlane(up);
  if (norm(wall) > kInPlane) return unit(wall);
  return up.z < 0 ? Point{0, -1} : Point{0, 1};
}

}  // namespace

Point paperUp(const BuiltDesign& built, const BuiltPiece& piece) {
  if (!piece.role) return wayUp(uprightOf(piece));
  if (!piece.role->around) return {0, 1};
  const Point3 up = uprightOf(built.pieces.front());
  return wayUp(piece.role->around->inverse().turn(up));
}

int quartersToPaper(const BuiltDesign& built, const BuiltPiece& piece) {
  const Point up = paperUp(built, piece);
  const Point onBlank = inPlane(piece.flat.frames.front().turn({up.x, up.y, 0}));
  if (std::abs(onBlank.y) >= std::abs(onBlank.x)) return onBlank.y > 0 ? 0 : 2;
  return onBlank.x > 0 ? 1 : 3;
}

std::vector<PlaneMap> paperPlaces(const Net& net, Point up, bool behind) {
  const Bounds first = bounds(net.panels.front().outline);
  const Point middle = (first.low + first.high) / 2;
  const Point right = turnLeft(up) * (behind ? -1 : 1);
  std::vector<PlaneMap> places;
  for (const Transform& flat : pose(net, 0.0)) {
    const Transform back = flat.inverse();
    places.push_back({inPlane(back.apply(middle)), inPlane(back.turn({right.x, right.y, 0})),
                      inPlane(back.turn({up.x, up.y, 0}))});
  }
  return places;
}

PlaneMap paperOnBlank(const Net& net, const FlatNet& flat, Point up, bool behind) {
  const PlaneMap own = paperPlaces(net, up, behind).front();
  const Transform& frame = flat.frames.front();
  const auto level = [](Point3 p) { return Point{p.x, p.y}; };
  const auto turned = [&](Point v) { return level(frame.turn({v.x, v.y, 0})); };
  return {level(frame.apply(own.origin)), turned(own.x), turned(own.y)};
}

}  // namespace creasewright
