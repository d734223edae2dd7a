#include "extras/wrap_round.h"

#include <algorithm>
#include <cmath>

#include "extras/extra_kind.h"

namespace creasewright {
namespace {

constexpr double kFar = 1e4;  // mm, beyond any face

/// A product axis of one piece and where the middle of the whole box is on it, in the frame of the
/// piece's panel 0.
struct AxisOfPiece {
  Point3 along;
  double middle = 0;
};

std::optional<AxisOfPiece> axisOf(const Host& host, const HostPiece& piece, std::size_t axis) {
  const std::optional<OutsideBox> whole = host.box ? host.box : outsideOf(host);
  const bool first = &piece == host.pieces.data();
  if (!whole || (!piece.place && !first)) return std::nullopt;
  const Transform into = piece.place.value_or(Transform()).inverse();
  const Point3 along = into.turn(whole->axes.at(axis));
  return AxisOfPiece{along, dot(into.apply(whole->centre), along)};
}

/// What goes round as it lies over the box, its own thickness left out.
std::vector<WrapBody> bodiesOf(const Host& host) {
  std::vector<WrapBody> bodies;
  const std::optional<OutsideBox> box = outsideOf(host);
  if (!box) return bodies;
  for (const WrapRound& wrap : host.wraps) {
    const Result<const ExtraKind*> kind = findExtraKind(wrap.kind);
    if (!kind || !(*kind)->ofCard) continue;
    bodies.push_back({wrap.axis, box->sizes});
    bodies.back().sizes.at(wrap.axis) = wrap.width;
  }
  return bodies;
}

}  // namespace

std::vector<WrapRound> wrapsOf(std::span<const Extra> extras, const Host& host) {
  Host wrapped = host;
  wrapped.wraps.clear();
  // Ribbons last: they lie on what is of card.
  for (const bool ofCard : {true, false})
    for (const Extra& extra : extras) {
      const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
      if (!kind || !(*kind)->runs || (*kind)->ofCard != ofCard) continue;
      wrapped.under.clear();
      if (!ofCard) wrapped.under = bodiesOf(wrapped);
      const std::vector<WrapRound> found = (*kind)->runs(extra, wrapped);
      wrapped.wraps.insert(wrapped.wraps.end(), found.begin(), found.end());
    }
  return std::move(wrapped.wraps);
}

Region underWrap(const Host& host, const HostFace& face, const WrapRound& wrap) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const std::optional<AxisOfPiece> axis = axisOf(host, piece, wrap.axis);
  if (!axis) return {};
  const Transform& place = (*piece.folded)[static_cast<std::size_t>(face.panel)];
  const Point3 seen = place.inverse().turn(axis->along);
  const Point along{seen.x, seen.y};
  constexpr double kSquare = 0.3;  // the face looks along the axis: nothing lies over it
  if (norm(along) < kSquare) return {};
  const Point u = unit(along);
  const double middle = (axis->middle - dot(place.apply(Point{}), axis->along)) / norm(along);
  const double half = wrap.width / 2 / norm(along);
  const Point across = turnLeft(u) * kFar;
  const Point low = u * (middle - half);
  const Point high = u * (middle + half);
  return intersect(region(face.area.outer),
                   region({low - across, high - across, high + across, low + across}));
}

}  // namespace creasewright
