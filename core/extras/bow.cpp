#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <optional>

#include "extras/beside_face.h"
#include "extras/face_room.h"
#include "extras/for_show.h"
#include "extras/free_place.h"
#include "extras/kinds.h"
#include "extras/place_measures.h"
#include "extras/ribbon_picture.h"
#include "extras/ribbon_way.h"
#include "geometry/region.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kLap = 15;         // mm of a glued loop
constexpr double kStep = 20;        // mm that the next layer is smaller (15 to 20: common practice)
constexpr double kThickness = 0.3;  // mm of ribbon
constexpr double kTrimmed = 20;     // mm of ends that are cut off
constexpr double kSpan = 90;        // mm, where it is left open and there is room
constexpr double kSpanStep = 5;     // mm
constexpr double kLeastSpan = 20;   // mm
constexpr double kShortTails = 0.35;  // of those that suit a bow
constexpr double kLeastBare = 40;  // mm: smaller ones lie on what is there, rather than beside it

int layersOf(const Extra& extra, BowForm form) {
  return form == BowForm::Layered ? static_cast<int>(extra.parameters.count("layers")) : 1;
}

/// Ribbon for a bow, mm. Two loops, each out and back over half the span, two tails and a knot of
/// about four widths: 2B + 2T + 4w (loops: own derivation; knot: common practice; B 90, T 70, w 15
/// give 380 mm). A folded bow is closed loops of 2B and a lap, each layer smaller, a strip for both
/// tails and a band round the middle of 2w, the layers' thickness and a lap (common practice).
double ribbonFor(const BowShape& bow, double width) {
  if (bow.form == BowForm::TwoLoops) return 2 * bow.span + 2 * bow.tail + 4 * width;
  double length = 2 * bow.tail + 2 * width + 4 * bow.layers * kThickness + kLap;
  for (int i = 0; i < bow.layers; ++i) length += 2 * (bow.span - kStep * i) + kLap;
  return length;
}

/// A bow of a span and, where its tails are left open, a share of the tails that suit it: about
/// three quarters of the span, those of a folded bow one strip of 0.8 of it.
BowShape bowOf(const Extra& extra, double span, double share) {
  BowShape bow;
  bow.form = static_cast<BowForm>(extra.parameters.count("form"));
  bow.span = span;
  bow.layers = layersOf(extra, bow.form);
  bow.tail = extra.parameters.mm("tail");
  if (bow.tail == 0) bow.tail = share * span * (bow.form == BowForm::TwoLoops ? 0.75 : 0.4);
  return bow;
}

/// A bow and the place found for it, in the upright frame.
struct PlacedBow {
  BowShape bow;
  Point place;
};

/// Where a bow is looked for on a face.
struct BowSearch {
  const Extra& extra;
  const Host& host;
  double least = 0;  ///< mm of span

  [[nodiscard]] double chosen() const { return extra.parameters.mm("span"); }
  /// The bows that are tried: the one that is chosen, or the largest that fits, with tails as long
  /// as they suit it, or shorter.
  [[nodiscard]] std::vector<BowShape> bows() const {
    std::vector<double> spans;
    if (chosen() > 0) {
      spans = {chosen()};
    } else {
      for (double span = std::max(kSpan, least); span > least; span -= kSpanStep)
        spans.push_back(span);
      spans.push_back(least);
    }
    std::vector<BowShape> all;
    for (const double span : spans)
      for (const double share : {1.0, 0.6, kShortTails}) {
        all.push_back(bowOf(extra, span, share));
        if (extra.parameters.mm("tail") > 0) break;
      }
    return all;
  }
  /// All that it covers about its knot, as it is turned on the face.
  [[nodiscard]] Polygon shapeOf(const BowShape& bow) const {
    const double c = std::cos(turnOf(extra.parameters).radians());
    const double s = std::sin(turnOf(extra.parameters).radians());
    Polygon turned;
    for (const Point& p : bowOutline(bow, extra.parameters.mm("width")))
      turned.push_back({c * p.x - s * p.y, s * p.x + c * p.y});
    return turned;
  }
  /// The card of a face, and what of it nothing covers or takes.
  [[nodiscard]] Region card(const HostFace& face, bool bare) const {
    Region taken = joined(onFace(host, face));
    for (const Overlay& cover : overlaysOf(host, face))
      if (bare || isRound(cover.name))
        taken.insert(taken.end(), cover.area.begin(), cover.area.end());
    return laidUpright(face, subtract(cardOf(face), taken));
  }
  [[nodiscard]] bool isRound(const std::string& kind) const {
    return std::ranges::any_of(
        host.wraps, [&](const WrapRound& w) { return w.kind == kind; });
  }
  /// Its place on one face: where it is told, else where it hides nothing, else over what is there.
  [[nodiscard]] std::optional<PlacedBow> spotOn(const HostFace& face) const {
    if (isShifted(extra.parameters)) return ownSpot(face);
    for (const bool bare : {true, false}) {
      const Region free = card(face, bare);
      for (const BowShape& bow : bows()) {
        if (bare && bow.span < kLeastBare && chosen() == 0) break;
        if (const auto place = nearestPlace(placesFor(shapeOf(bow), free), {}))
          return PlacedBow{bow, *place};
      }
    }
    return std::nullopt;
  }
  [[nodiscard]] Point ownPlace(const HostFace& face) const {
    return shiftOn(bounds(laidUpright(face, face.area.outer)), extra.parameters);
  }
  [[nodiscard]] bool staysAt(const HostFace& face, const BowShape& bow) const {
    constexpr double kNoArea = 1e-3;  // mm2
    Polygon laid = shapeOf(bow);
    for (Point& p : laid) p = p + ownPlace(face);
    return area(subtract(region(laid), laidUpright(face, cardOf(face)))) < kNoArea;
  }
  [[nodiscard]] std::optional<PlacedBow> ownSpot(const HostFace& face) const {
    for (const BowShape& bow : bows())
      if (staysAt(face, bow)) return PlacedBow{bow, ownPlace(face)};
    return std::nullopt;
  }
  /// Where a ribbon crosses: whether its loops and tails stay over the box.
  [[nodiscard]] bool staysOverCrossing(const BowShape& bow) const {
    const Bounds own = bounds(shapeOf(bow));
    const Point half = host.crossing / 2;
    return own.low.x > -half.x && own.high.x < half.x && own.low.y > -half.y && own.high.y < half.y;
  }
  /// Why it finds no place: its knot lies beyond the edge, or its loops and tails do.
  [[nodiscard]] Problem refusal(const HostFace& face) const {
    if (isShifted(extra.parameters) &&
        locate(ownPlace(face), laidUpright(face, face.area.outer)) == Side::Outside)
      return {ProblemCode::ExtraMiddleOff, extra.kind, {faceName(host, face)}};
    return noRoom([&](const BowShape& bow) {
      return isShifted(extra.parameters) ? staysAt(face, bow)
                                         : !placesFor(shapeOf(bow), card(face, false)).empty();
    });
  }
  /// Its span and the largest that would do.
  [[nodiscard]] Problem noRoom(const std::function<bool(const BowShape&)>& stays) const {
    const double span = chosen() > 0 ? chosen() : least;
    const auto fits = [&](double share) { return stays(bowOf(extra, span * share, kShortTails)); };
    return noRoomFor(extra, host, {Length::mm(span), "width"}, Length::mm(least), fits);
  }
};

ExtraParts bowOn(const BowSearch& search, const HostFace& face, const PlacedBow& spot) {
  const Host& host = search.host;
  HostFace there = movedTo(face, spot.place);
  const Polygon outline = inPanel(there, search.shapeOf(spot.bow));
  there.upright =
      Angle::degrees(there.upright.degrees() + turnOf(search.extra.parameters).degrees());
  BowShape bow = spot.bow;
  bow.face = placeOn(there, {}, host.bench.caliper.mm() / 2 + host.onFaces.mm() + 1);
  ExtraParts parts;
  parts.warnings = coveredBy(search.extra, host, face, region(outline));
  std::erase_if(parts.warnings, [&](const Problem& p) {
    return !search.isRound(std::get<std::string>(p.values.at(1)));
  });
  parts.taken.push_back({search.extra.kind, face.piece, face.panel, outline});
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const Transform& own = (*piece.folded)[static_cast<std::size_t>(face.panel)];
  const Transform place = piece.place && !host.box ? piece.place->after(own) : own;
  Raised raised{search.extra.kind, place.normal() * -1, {}, 0, false, true};
  for (const Point& p : outline) raised.corners.push_back(place.apply(p));
  parts.raised = std::move(raised);
  parts.ribbon.emplace();
  parts.ribbon->shape = bow;
  return parts;
}

/// Where a ribbon crosses; a bow that is chosen too large is made so, and told.
ExtraParts bowOnRibbon(const BowSearch& search) {
  ExtraParts parts;
  parts.ribbon.emplace();
  const std::vector<BowShape> bows = search.bows();
  const auto stays = [&](const BowShape& bow) { return search.staysOverCrossing(bow); };
  const auto fitting = std::ranges::find_if(bows, stays);
  parts.ribbon->shape = fitting != bows.end() ? *fitting : bows.back();
  if (fitting != bows.end() || search.chosen() == 0) return parts;
  parts.warnings = {search.noRoom(stays)};
  parts.warnings.front().severity = Severity::Warning;
  return parts;
}

Result<ExtraParts> placed(const BowSearch& search) {
  if (search.host.pieces.empty()) return bowOnRibbon(search);
  const Result<std::vector<HostFace>> faces = facesFor(search.extra, search.host);
  if (!faces) return faces.problem();
  for (const HostFace& face : *faces)
    if (const auto spot = search.spotOn(face)) return bowOn(search, face, *spot);
  return search.refusal(faces->front());
}

Result<ExtraParts> buildBow(const Extra& extra, const Host& host) {
  const BowForm form = static_cast<BowForm>(extra.parameters.count("form"));
  const Length width = extra.parameters.length("width");
  const Length smallest = Length::mm(kStep * (layersOf(extra, form) - 1)) + width * 2;
  const Length span = extra.parameters.length("span");
  if (span > Length() && span < smallest)
    return Problem{ProblemCode::ParameterTooSmall, "span", {span, smallest}};
  Result<ExtraParts> found = placed({extra, host, std::max(kLeastSpan, smallest.mm())});
  if (!found) return found;
  ExtraParts parts = std::move(found).value();
  RibbonNeed& need = *parts.ribbon;
  need.width = width;
  need.cross = false;
  need.length = ribbonSteps(host.bench.grid)
                    .roundUp(Length::mm(ribbonFor(*need.shape, width.mm()) + kTrimmed));
  need.bow = need.length;
  return parts;
}

std::vector<ParameterSpec> bowParameters() {
  std::vector<ParameterSpec> all{
      choice(
          "form", worded("styles", "Form"), worded("styles", "Of the bow."),
          {worded("styles", "Two loops"), worded("styles", "Flat"), worded("styles", "Layered")}),
      measure("width", worded("styles", "Width"), worded("styles", "Of the ribbon."))
          .standard(mm(15))
          .from(mm(3))
          .to(mm(80)),
      measure("span", worded("styles", "Span"),
              worded("styles", "From tip to tip of its largest loops; 0 takes what fits."))
          .from(Length())
          .to(mm(400)),
      measure("tail", worded("styles", "Tails"),
              worded("styles", "Length of each; 0 follows the span."))
          .from(Length())
          .to(mm(600)),
      number("layers", worded("styles", "Layers"), worded("styles", "Of a layered bow."))
          .standard(2)
          .from(1)
          .to(4)};
  std::ranges::move(placeMeasures(), std::back_inserter(all));
  return all;
}

}  // namespace

ExtraKind bowExtra() {
  return {.id = "made-bow",
          .title = worded("styles", "Bow"),
          .summary =
              worded("styles", "Made for itself and glued on, where ribbons cross or on a face."),
          .act = ExtraAct::GlueBowOn,
          .ofCard = false,
          .onFace = true,
          .carriers = {Carrier::Box, Carrier::Face, Carrier::RibbonOn},
          .parameters = bowParameters(),
          .build = buildBow};
}

}  // namespace creasewright
