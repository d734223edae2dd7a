#include "extras/face_room.h"

#include <algorithm>
#include <cmath>

#include "extras/flat_piece.h"
#include "extras/free_place.h"
#include "extras/wrap_round.h"

namespace creasewright {

std::vector<Overlay> overlaysOf(const Host& host, const HostFace& face) {
  std::vector<Overlay> covers;
  for (const WrapRound& wrap : host.wraps)
    if (Region under = underWrap(host, face, wrap); !under.empty())
      covers.push_back({wrap.kind, std::move(under)});
  for (const TakenPlace& taken : host.taken)
    if (taken.piece == face.piece && taken.panel == face.panel)
      covers.push_back({taken.kind, region(taken.outline)});
  return covers;
}

Region laidUpright(const HostFace& face, const Region& there) {
  Region laid;
  for (const Area& part : there) {
    Area turned{laidUpright(face, part.outer), {}};
    for (const Polygon& hole : part.holes) turned.holes.push_back(laidUpright(face, hole));
    laid.push_back(std::move(turned));
  }
  return laid;
}

HostFace movedTo(const HostFace& face, Point upright) {
  HostFace moved = face;
  moved.middle = inPanel(face, {upright}).front();
  return moved;
}

std::optional<Spot> firstSpot(const std::function<Region(double share)>& places) {
  constexpr double kAtMiddle = 0.5;  // mm
  for (const bool aside : {false, true}) {
    const double least = aside ? kLeastShare : kLeastAtMiddle;
    for (double share = kShareOfFace; share > least - kShareStep / 2; share -= kShareStep) {
      const std::optional<Point> place = nearestPlace(places(share), {});
      if (place && (aside || norm(*place) < kAtMiddle)) return Spot{share, *place};
    }
  }
  return std::nullopt;
}

NamedSide longerOf(Length width, Length height) {
  return height > width ? NamedSide{height, "height"} : NamedSide{width, "width"};
}

Problem noRoomFor(const Extra& extra, const Host& host, const NamedSide& longer, Length least,
                  const std::function<bool(double share)>& fits) {
  const Problem noPlace{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const bool open =
      extra.parameters.length("width") == Length() && extra.parameters.length("height") == Length();
  if (open) return noPlace;
  constexpr int kHalvings = 12;
  double fitting = 0;
  for (double share = 0.5, step = 0.25; step > std::ldexp(1.0, -kHalvings); step /= 2) {
    if (fits(share)) fitting = share;
    share = fitting + step;
  }
  const Length leaves = onGridBelow(longer.length.mm() * fitting, host.bench.grid);
  if (leaves < least) return noPlace;
  return {ProblemCode::ExtraTooLarge, extra.kind, {longer.length, leaves, longer.name}};
}

Problems coveredBy(const Extra& extra, const Host& host, const HostFace& face,
                   const Region& shape) {
  constexpr double kCounts = 0.5;  // mm2
  Problems covered;
  for (const Overlay& cover : overlaysOf(host, face)) {
    Problem problem{ProblemCode::ExtraCovered,
                    extra.kind,
                    {faceName(host, face), cover.name},
                    Severity::Warning};
    if (area(intersect(shape, cover.area)) > kCounts &&
        std::ranges::find(covered, problem) == covered.end())
      covered.push_back(std::move(problem));
  }
  return covered;
}

}  // namespace creasewright
