#include <algorithm>
#include <cmath>
#include <iterator>
#include <tuple>

#include "extras/beside_face.h"
#include "extras/face_room.h"
#include "extras/free_place.h"
#include "extras/kinds.h"
#include "extras/place_measures.h"
#include "extras/ribbon_way.h"
#include "folding/surfaces/upright.h"
#include "styles/parameter_rows.h"
#include "styles/parts/punched_hole.h"

namespace creasewright {
namespace {

constexpr double kHoleClear = 2;     // mm of card from a hole to folds and glue
constexpr double kKnot = 4;          // widths of ribbon in a knot (common practice)
constexpr double kPastKnot = 12;     // mm of ribbon beyond a knot (common practice)
constexpr double kTaped = 25;        // mm of an end that is stuck flat (common practice)
constexpr double kLargestHole = 12;  // mm: what is larger was not punched for a ribbon

/// A loop of two straight lines, as it is pulled taut, from one hole to the other or out of one and
/// back; both ways through the card; two ends (own derivation; reach 25, holes 15 apart, ends 52
/// and card of 0.3 give 157 mm).
double ribbonFor(const RibbonPull& pull) {
  const double loop = 2 * std::hypot(pull.reach, pull.spacing / 2);
  return loop + 2 * pull.caliper + 2 * pull.end;
}

/// A hole that a face has already, near its middle as it stands, and how far it is across.
struct Punched {
  Point middle;
  double across = 0;
};

bool isTaken(const Host& host, const HostFace& face, Point there) {
  return std::ranges::any_of(
      host.taken,
      [&](const TakenPlace& taken) {
        return taken.piece == face.piece && taken.panel == face.panel &&
               locate(there, taken.outline) != Side::Outside;
      });
}

std::optional<Punched> punchedIn(const Host& host, const HostFace& face) {
  constexpr double kRound = 0.1;  // mm
  std::optional<Punched> best;
  for (const Polygon& hole : face.area.holes) {
    const Bounds box = bounds(laidUpright(face, hole));
    const bool round = std::abs(box.width() - box.height()) < kRound && hole.size() > 8;
    if (!round || box.width() > kLargestHole) continue;
    const Point middle = (box.low + box.high) / 2;
    if (isTaken(host, face, inPanel(face, {middle}).front())) continue;
    if (!best || norm(middle) < norm(best->middle)) best = Punched{middle, box.width()};
  }
  return best;
}

bool looksDown(const Host& host, const HostFace& face) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  return dot(outOf(host, face), uprightOf(*piece.part)) < -0.5;
}

/// Faces of the box to pull at, the best first: those that have a hole, of what comes out of
/// another piece, and what is seen.
std::vector<HostFace> facesToPull(const Host& host) {
  std::vector<HostFace> faces = openFacesOf(host);
  std::erase_if(
      faces, [&](const HostFace& face) { return looksDown(host, face); });
  const auto comesOut = [&](const HostFace& face) {
    const std::string& own = host.pieces[static_cast<std::size_t>(face.piece)].part->name;
    return std::ranges::any_of(
        host.pieces,
        [&](const HostPiece& other) { return other.part->over && other.part->over->piece == own; });
  };
  std::ranges::stable_sort(faces, [&](const HostFace& a, const HostFace& b) {
    const auto rank = [&](const HostFace& face) {
      return std::tuple(!punchedIn(host, face), !comesOut(face), !isSeen(host, face));
    };
    return rank(a) < rank(b);
  });
  return faces;
}

struct PullSearch {
  const Extra& extra;
  const Host& host;

  /// Round one hole or both about the middle between them.
  [[nodiscard]] Polygon shape(const RibbonPull& pull) const {
    const double turn = turnOf(extra.parameters).radians();
    const Point half = Point{std::cos(turn), std::sin(turn)} * (pull.spacing / 2);
    std::vector<Point> corners;
    for (const Point middle : {half, half * -1})
      for (const Point& p : punchedHole(middle, pull.hole)) corners.push_back(p);
    return convexHull(std::move(corners));
  }
  /// Where card alone is, as the face stands, and nothing hides it.
  [[nodiscard]] Region room(const HostFace& face, bool seen) const {
    Region taken = joined(onFace(host, face));
    std::ranges::copy(joined(behindFace(host, face)), std::back_inserter(taken));
    if (seen)
      for (const Overlay& cover : overlaysOf(host, face))
        std::ranges::copy(cover.area, std::back_inserter(taken));
    return laidUpright(face, offset(subtract(cardOf(face), taken), -kHoleClear));
  }
  [[nodiscard]] bool isPlaced() const { return isShifted(extra.parameters); }
  /// The middle of the holes, in the face's upright frame.
  [[nodiscard]] std::optional<Point> placeOn(const HostFace& face, const RibbonPull& pull,
                                             bool seen) const {
    const Region places = placesFor(shape(pull), room(face, seen));
    const Point wanted = shiftOn(bounds(laidUpright(face, face.area.outer)), extra.parameters);
    const std::optional<Point> place = nearestPlace(places, wanted);
    constexpr double kHair = 1e-3;  // mm
    if (!place || (isPlaced() && distance(*place, wanted) > kHair)) return std::nullopt;
    return place;
  }
};

RibbonPull pullOf(const Extra& extra, const Host& host, int holes) {
  RibbonPull pull;
  pull.holes = holes;
  pull.spacing = holes == 2 ? extra.parameters.mm("spacing") : 0;
  pull.hole = extra.parameters.mm("hole");
  pull.reach = extra.parameters.mm("reach");
  pull.taped = extra.parameters.count("ends") == 1;
  pull.end = extra.parameters.mm("end");
  if (pull.end == 0)
    pull.end = pull.taped ? kTaped : kKnot * extra.parameters.mm("width") + kPastKnot;
  pull.caliper = host.bench.caliper.mm();
  return pull;
}

/// Through a face at a place of it, its holes punched unless they are there.
ExtraParts pullAt(const PullSearch& search, HostFace face, Point place, RibbonPull pull,
                  bool punch) {
  const Extra& extra = search.extra;
  ExtraParts parts;
  const HostFace there = movedTo(face, place);
  const Polygon outline = inPanel(there, search.shape(pull));
  parts.warnings = coveredBy(extra, search.host, face, region(outline));
  parts.taken.push_back({extra.kind, face.piece, face.panel, outline});
  HostFace turned = there;
  turned.upright = Angle::degrees(there.upright.degrees() + turnOf(extra.parameters).degrees());
  pull.face = placeOn(turned, {}, 0);
  for (int i = 0; punch && i < pull.holes; ++i) {
    const Point middle{(i - (pull.holes - 1) / 2.0) * pull.spacing, 0};
    parts.openings.push_back(
        {face.piece, face.panel, punchedHole(inPanel(turned, {middle}).front(), pull.hole)});
  }
  RibbonNeed need{extra.parameters.length("width"), {}, {}, false, {}};
  need.length = ribbonSteps(search.host.bench.grid).roundUp(Length::mm(ribbonFor(pull)));
  need.pull = pull;
  parts.ribbon = std::move(need);
  return parts;
}

/// Through the hole that a face has, or through holes of its own where there is room.
std::optional<ExtraParts> pullOn(const PullSearch& search, const HostFace& face, bool seen) {
  const auto holes = static_cast<int>(search.extra.parameters.count("holes"));
  const std::optional<Punched> punched = punchedIn(search.host, face);
  if (holes == 0 && punched && !search.isPlaced()) {
    RibbonPull pull = pullOf(search.extra, search.host, 1);
    pull.hole = punched->across;
    return pullAt(search, face, punched->middle, pull, false);
  }
  const RibbonPull pull = pullOf(search.extra, search.host, holes == 1 ? 1 : 2);
  const std::optional<Point> place = search.placeOn(face, pull, seen);
  if (!place) return std::nullopt;
  return pullAt(search, face, *place, pull, true);
}

/// Why there is no room on a face: what is behind it, the place that was chosen, or its size.
Problem refusal(const PullSearch& search, const HostFace& face) {
  const RibbonPull pull =
      pullOf(search.extra, search.host, search.extra.parameters.count("holes") == 1 ? 1 : 2);
  if (search.isPlaced() && !placesFor(search.shape(pull), search.room(face, false)).empty())
    return {ProblemCode::ExtraOffFace, search.extra.kind, {faceName(search.host, face)}};
  const Region bare = laidUpright(face, offset(cardOf(face), -kHoleClear));
  const std::vector<BesideFace> behind = behindFace(search.host, face);
  if (!behind.empty() && !placesFor(search.shape(pull), bare).empty())
    return {ProblemCode::ExtraInTheWay,
            search.extra.kind,
            {faceName(search.host, face), behind.front().name}};
  return {ProblemCode::ExtraNoPlace, search.extra.kind, {}};
}

Result<ExtraParts> buildPull(const Extra& extra, const Host& host) {
  std::vector<HostFace> faces = facesToPull(host);
  if (!extra.face.empty()) {
    std::erase_if(faces, [&](const HostFace& f) { return faceName(host, f) != extra.face; });
    if (faces.empty()) return Problem{ProblemCode::ExtraFaceUnknown, extra.kind, {extra.face}};
  }
  if (faces.empty()) return Problem{ProblemCode::ExtraNoPlace, extra.kind, {}};
  const PullSearch search{extra, host};
  for (const bool seen : {true, false})
    for (const HostFace& face : faces)
      if (std::optional<ExtraParts> parts = pullOn(search, face, seen)) return *std::move(parts);
  return refusal(search, faces.front());
}

std::vector<ParameterSpec> pullParameters() {
  std::vector<ParameterSpec> all{
      measure("width", worded("styles", "Width"), worded("styles", "Of the ribbon."))
          .standard(mm(10))
          .from(mm(3))
          .to(mm(25)),
      number("holes", worded("styles", "Holes"),
             worded("styles", "One or two; 0 takes a hole that is there, or punches two."))
          .from(0)
          .to(2),
      measure("hole", worded("styles", "Hole"),
              worded("styles", "Across each hole; the ribbon is gathered to go through."))
          .standard(mm(5))
          .from(mm(3))
          .to(mm(12)),
      measure("spacing", worded("styles", "Spacing"),
              worded("styles", "Between two holes, from middle to middle."))
          .standard(mm(15))
          .from(otherPlus("hole", mm(3)))
          .to(mm(150)),
      measure("reach", worded("styles", "Stands out"),
              worded("styles", "How far the loop reaches when it is pulled."))
          .standard(mm(25))
          .from(mm(10))
          .to(mm(150)),
      choice("ends", worded("styles", "Ends"), worded("styles", "How they are held inside."),
             {worded("styles", "Knotted"), worded("styles", "Stuck flat with tape")}),
      measure("end", worded("styles", "Length of each end"),
              worded("styles", "Inside; 0 takes what a knot or a strip of tape needs."))
          .from(Length())
          .to(mm(200))};
  std::ranges::move(placeMeasures(), std::back_inserter(all));
  return all;
}

}  // namespace

ExtraKind ribbonPullExtra() {
  return {.id = "ribbon-pull",
          .title = worded("styles", "Ribbon pull"),
          .summary = worded("styles",
                            "A short loop of ribbon through holes of a face, such as the front of "
                            "a drawer."),
          .act = ExtraAct::ThreadPull,
          .turn = ExtraTurn::First,
          .ofCard = false,
          .onFace = true,
          .opensFace = true,
          .parameters = pullParameters(),
          .build = buildPull,
          .faces = facesToPull};
}

}  // namespace creasewright
