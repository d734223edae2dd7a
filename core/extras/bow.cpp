#include <algorithm>
#include <iterator>

#include "extras/kinds.h"
#include "extras/place_measures.h"
#include "extras/ribbon_way.h"
#include "geometry/region.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kLap = 15;         // mm of a glued loop
constexpr double kStep = 20;        // mm that the next layer is smaller (15 to 20: common practice)
constexpr double kThickness = 0.3;  // mm of ribbon
constexpr double kTrimmed = 20;     // mm of ends that are cut off

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

/// Its middle on a face; on a ribbon none.
Result<std::optional<FacePlace>> placeOf(const Extra& extra, const Host& host) {
  if (host.pieces.empty()) return std::optional<FacePlace>();
  const Result<HostFace> face = faceFor(extra, host);
  if (!face) return face.problem();
  HostFace there = *face;
  const Bounds whole = bounds(laidUpright(*face, face->area.outer));
  const Point moved = shiftOn(whole, extra.parameters);
  there.middle = inPanel(*face, {moved}).front();
  if (locate(there.middle, face->area.outer) == Side::Outside)
    return Problem{ProblemCode::ExtraOffFace, extra.kind, {faceName(host, *face)}};
  there.upright = Angle::degrees(there.upright.degrees() + turnOf(extra.parameters).degrees());
  const double lift = host.bench.caliper.mm() / 2 + host.onFaces.mm() + 1;
  return std::optional(placeOn(there, {}, lift));
}

Result<ExtraParts> buildBow(const Extra& extra, const Host& host) {
  BowShape bow;
  bow.form = static_cast<BowForm>(extra.parameters.count("form"));
  bow.span = extra.parameters.mm("span");
  bow.layers = layersOf(extra, bow.form);
  bow.tail = extra.parameters.mm("tail");
  // Tails of about three quarters of the span; those of a folded bow are one strip of 0.8 of it.
  if (bow.tail == 0) bow.tail = bow.span * (bow.form == BowForm::TwoLoops ? 0.75 : 0.4);
  const Result<std::optional<FacePlace>> place = placeOf(extra, host);
  if (!place) return place.problem();
  bow.face = *place;
  const Length width = extra.parameters.length("width");
  const Length smallest = Length::mm(kStep * (bow.layers - 1)) + width * 2;
  if (Length::mm(bow.span) < smallest)
    return Problem{ProblemCode::ParameterTooSmall, "span", {Length::mm(bow.span), smallest}};
  ExtraParts parts;
  RibbonNeed need{width, {}, {}, false, {}};
  need.length =
      ribbonSteps(host.bench.grid).roundUp(Length::mm(ribbonFor(bow, width.mm()) + kTrimmed));
  need.bow = need.length;
  need.shape = bow;
  parts.ribbon = std::move(need);
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
              worded("styles", "From tip to tip of its largest loops."))
          .standard(mm(90))
          .from(mm(20))
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
