#include <algorithm>

#include "extras/flat_piece.h"
#include "extras/kinds.h"
#include "styles/limits.h"

namespace creasewright {
namespace {

constexpr double kOfFace = 0.6;  // of the face's width and height, when no size is given
constexpr double kFrame = 5;     // mm of card that must stay round a window
constexpr double kClear = 1;     // mm from the film to the folds

struct Sides {
  double width;
  double height;
};

Polygon about(Sides s, double radius) {
  Polygon outline = roundedRectangle(s.width, s.height, radius);
  for (Point& p : outline) p = p - Point{s.width / 2, s.height / 2};
  return outline;
}

Sides sidesOf(const Extra& extra, const Bounds& face, ToolGrid grid) {
  const auto side = [&](std::string_view key, double room) {
    const Length chosen = extra.parameters.length(key);
    return (chosen > Length() ? chosen : onGridBelow(room * kOfFace, grid)).mm();
  };
  return {side("width", face.width()), side("height", face.height())};
}

Result<ExtraParts> buildWindow(const Extra& extra, const Host& host) {
  const Result<HostFace> face = faceFor(extra, host);
  if (!face) return face.problem();
  const Region card = region(laidUpright(*face, face->area.outer));
  const Bounds room = bounds(card.front().outer);
  const Sides sides = sidesOf(extra, room, host.making.grid);
  const Polygon outline = about(sides, extra.parameters.mm("radius"));
  if (sides.width < 5 || sides.height < 5 || !face->area.holes.empty() ||
      area(subtract(region(outline), offset(card, -kFrame))) > 0.01)
    return Problem{ProblemCode::ExtraTooLarge,
                   extra.kind,
                   {Length::mm(std::max(sides.width, sides.height)),
                    Length::mm(std::max(0.0, std::min(room.width(), room.height()) - 2 * kFrame))}};
  const double lap = extra.parameters.mm("lap");
  const Region film = intersect(region(about({sides.width + 2 * lap, sides.height + 2 * lap}, 0)),
                                offset(card, -kClear));
  ExtraPiece piece{flatPiece("film", {film.front().outer, {}}), Placing::InFace};
  const Point middle = bounds(film.front().outer).low * -1;
  piece.faces.push_back(
      placeOn(*face, middle, -(host.making.caliper.mm() + extra.card.caliper.mm()) / 2));
  ExtraParts parts;
  parts.pieces.push_back(std::move(piece));
  Polygon opening = inPanel(*face, outline);
  std::ranges::reverse(opening);
  parts.opening = FaceOpening{face->piece, face->panel, std::move(opening)};
  return parts;
}

}  // namespace

ExtraKind windowExtra() {
  return {
      .id = "window",
      .title = "Window",
      .summary = "An opening in a face, with clear film behind it.",
      .onFace = true,
      .parameters = {{"width", "Width", "0 takes six tenths of the face.", ParameterKind::Length, 0,
                      fixed(Length()), fixed(kLargestSide)},
                     {"height", "Height", "0 takes six tenths of the face.", ParameterKind::Length,
                      0, fixed(Length()), fixed(kLargestSide)},
                     {"radius", "Corner radius", "0 for sharp corners.", ParameterKind::Length,
                      Length::nanometres(3'000'000).nm(), fixed(Length()),
                      fixed(Length::nanometres(100'000'000))},
                     {"lap", "Lap of the film", "Glued round the opening.", ParameterKind::Length,
                      Length::nanometres(6'000'000).nm(), fixed(Length::nanometres(3'000'000)),
                      fixed(Length::nanometres(30'000'000))}},
      .build = buildWindow};
}

}  // namespace creasewright
