#include <algorithm>
#include <iterator>
#include <optional>

#include "extras/beside_face.h"
#include "extras/face_room.h"
#include "extras/flat_piece.h"
#include "extras/for_show.h"
#include "extras/free_place.h"
#include "extras/kinds.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kSmallestWindow = 5;  // mm
constexpr double kFilmClear = 2;       // mm from the film to folds and glue
constexpr double kShown = 1;           // mm from the opening to what lies over the face

struct Sides {
  double width;
  double height;
};

Polygon about(Sides s, double radius) {
  Polygon outline = roundedRectangle(s.width, s.height, radius);
  for (Point& p : outline) p = p - Point{s.width / 2, s.height / 2};
  return outline;
}

/// A face while a window is looked for on it, all as it stands.
struct Candidate {
  HostFace face;
  Region card;    ///< where film may be glued were nothing behind it
  Region behind;  ///< what is there
  Region over;    ///< what hides the opening
};

Candidate candidate(const Host& host, const HostFace& face) {
  Candidate c{face, offset(laidUpright(face, cardOf(face)), -kFilmClear), {}, {}};
  Region beside = joined(behindFace(host, face));
  for (Area& part : joined(onFace(host, face))) beside.push_back(std::move(part));
  c.behind = offset(laidUpright(face, beside), kFilmClear);
  std::vector<Polygon> covers;
  for (const Overlay& cover : overlaysOf(host, face))
    for (const Area& part : cover.area) covers.push_back(laidUpright(face, part.outer));
  if (!covers.empty()) c.over = offset(unite(covers), kShown);
  return c;
}

struct WindowSearch {
  const Extra& extra;
  const Host& host;

  [[nodiscard]] Sides sidesAt(const HostFace& face, double share) const {
    const Bounds room = bounds(laidUpright(face, face.area.outer));
    const auto side = [&](std::string_view key, double whole) {
      const Length chosen = extra.parameters.length(key);
      return (chosen > Length() ? chosen : onGridBelow(whole * share, host.bench.grid)).mm();
    };
    return {side("width", room.width()), side("height", room.height())};
  }
  [[nodiscard]] Sides filmFor(Sides opening) const {
    const double lap = 2 * extra.parameters.mm("lap");
    return {opening.width + lap, opening.height + lap};
  }
  /// Where the middle of a window of a share may lie.
  [[nodiscard]] Region places(const Candidate& c, double share, bool seen) const {
    const Sides sides = sidesAt(c.face, share);
    if (std::min(sides.width, sides.height) < kSmallestWindow) return {};
    const Region film = placesFor(about(filmFor(sides), 0), subtract(c.card, c.behind));
    if (film.empty() || !seen || c.over.empty()) return film;
    const Region open = laidUpright(c.face, region(c.face.area.outer));
    return intersect(film, placesFor(about(sides, 0), subtract(open, c.over)));
  }
};

ExtraParts windowAt(const WindowSearch& search, const HostFace& face, const Spot& spot) {
  const Extra& extra = search.extra;
  const HostFace there = movedTo(face, spot.place);
  const Sides sides = search.sidesAt(face, spot.share);
  const Polygon film = about(search.filmFor(sides), 0);
  ExtraPiece piece{flatPiece("film", {film, {}}), Placing::InFace};
  const double lift = -(search.host.bench.caliper.mm() + extra.card.caliper.mm()) / 2;
  piece.faces.push_back(placeOn(there, bounds(film).low * -1, lift));
  ExtraParts parts;
  parts.pieces.push_back(std::move(piece));
  Polygon opening = inPanel(there, about(sides, extra.parameters.mm("radius")));
  parts.warnings = coveredBy(extra, search.host, face, region(opening));
  std::ranges::reverse(opening);
  parts.openings.push_back({face.piece, face.panel, std::move(opening)});
  return parts;
}

/// The part beside a face that most of a window's film would lie against; nothing where none does.
std::optional<BesideFace> mostInTheWay(const WindowSearch& search, const Candidate& c) {
  const Region film = region(about(search.filmFor(search.sidesAt(c.face, kShareOfFace)), 0));
  std::vector<BesideFace> beside = behindFace(search.host, c.face);
  std::ranges::move(onFace(search.host, c.face), std::back_inserter(beside));
  const auto overlap = [&](const BesideFace& part) {
    return area(intersect(film, laidUpright(c.face, part.area)));
  };
  const auto most = std::ranges::max_element(beside, {}, overlap);
  if (most == beside.end() || overlap(*most) == 0) return std::nullopt;
  return *most;
}

/// Why a face takes no window: what is behind it, or its size.
Problem refusal(const WindowSearch& search, const Candidate& c) {
  const Sides least = search.sidesAt(c.face, kLeastShare);
  const bool bareHasRoom = std::min(least.width, least.height) >= kSmallestWindow &&
                           !placesFor(about(search.filmFor(least), 0), c.card).empty();
  const std::optional<BesideFace> other = mostInTheWay(search, c);
  if (bareHasRoom && other)
    return {ProblemCode::ExtraInTheWay,
            search.extra.kind,
            {faceName(search.host, c.face), other->name}};
  const auto fits = [&](double share) {
    const Polygon film = about(search.filmFor({least.width * share, least.height * share}), 0);
    return !placesFor(film, subtract(c.card, c.behind)).empty();
  };
  const auto [shorter, longer] = std::minmax(least.width, least.height);
  const Length smallest = Length::mm(shorter > 0 ? kSmallestWindow * longer / shorter : longer);
  return noRoomFor(search.extra, search.host,
                   longerOf(Length::mm(least.width), Length::mm(least.height)), smallest, fits);
}

/// On the first face that has room for it where it is seen, or else where it is covered.
Result<ExtraParts> buildWindow(const Extra& extra, const Host& host) {
  const Result<std::vector<HostFace>> faces = facesFor(extra, host);
  if (!faces) return faces.problem();
  const WindowSearch search{extra, host};
  std::vector<Candidate> candidates;
  for (const HostFace& face : *faces) candidates.push_back(candidate(host, face));
  for (const bool seen : {true, false})
    for (const Candidate& c : candidates) {
      const auto spot = firstSpot([&](double share) { return search.places(c, share, seen); });
      if (spot) return windowAt(search, c.face, *spot);
    }
  return refusal(search, candidates.front());
}

}  // namespace

ExtraKind windowExtra() {
  return {.id = "window",
          .title = worded("styles", "Window"),
          .summary = worded("styles", "An opening in a face, with clear film behind it."),
          .act = ExtraAct::GlueFilmIn,
          .turn = ExtraTurn::First,
          .ofFilm = true,
          .onFace = true,
          .opensFace = true,
          .words = {.panels = {{"film", worded("panels", "film")}},
                    .pieces = {{"film", worded("pieces", "film")}}},
          .parameters =
              {measure("width", worded("styles", "Width"),
                       worded("styles", "0 takes six tenths of the face, or what is free of it."))
                   .from(Length())
                   .to(kLargestSide),
               measure("height", worded("styles", "Height"),
                       worded("styles", "0 takes six tenths of the face, or what is free of it."))
                   .from(Length())
                   .to(kLargestSide),
               measure("radius", worded("styles", "Corner radius"),
                       worded("styles", "0 for sharp corners."))
                   .standard(mm(3))
                   .from(Length())
                   .to(mm(100)),
               measure("lap", worded("styles", "Lap of the film"),
                       worded("styles", "Glued round the opening."))
                   .standard(mm(6))
                   .from(mm(3))
                   .to(mm(30))},
          .build = buildWindow};
}

}  // namespace creasewright
