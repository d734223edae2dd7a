#include "extras/layer_stack.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "base/excerpt.h"
#include "extras/flat_piece.h"
#include "extras/place_measures.h"
#include "geometry/region.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kSmallestLayer = 5;  // mm
constexpr double kSliver = 1e-3;      // mm2 over the edge that do not count

struct Size {
  double width;
  double height;
};

LabelShape shapeOf(const Parameters& parameters) {
  return static_cast<LabelShape>(parameters.count("shape"));
}

Polygon placed(const Polygon& outline, Point middle, Angle turn) {
  const Bounds box = bounds(outline);
  const Point own = (box.low + box.high) / 2;
  const double c = std::cos(turn.radians());
  const double s = std::sin(turn.radians());
  Polygon there;
  for (const Point& p : outline) {
    const Point q = p - own;
    there.push_back(middle + Point{c * q.x - s * q.y, s * q.x + c * q.y});
  }
  return there;
}

/// How near the edges of two rings come to each other.
double clearance(const Polygon& a, const Polygon& b) {
  double least = 1e9;
  const auto from = [&](const Polygon& corners, const Polygon& ring) {
    for (const Point& p : corners)
      for (std::size_t i = 0; i < ring.size(); ++i)
        least = std::min(least, distanceToSegment(p, {ring[i], ring[(i + 1) % ring.size()]}));
  };
  from(a, b);
  from(b, a);
  return least;
}

/// What a layer may lie on, and how it lies there.
struct Ground {
  Polygon below;
  double inset;  ///< mm of it that stay seen
  Point middle;
  Angle turn;

  [[nodiscard]] bool holds(const Polygon& outline) const {
    const Polygon there = placed(outline, middle, turn);
    if (area(subtract(region(there), region(below))) > kSliver) return false;
    return inset == 0 || clearance(there, below) >= inset - kHair;
  }
  /// The largest share of a size that stays on it; 0 where none does.
  [[nodiscard]] double shareOf(LabelShape shape, Size size) const {
    constexpr double kTooSmall = 0.02;
    if (holds(labelOutline(shape, size.width, size.height))) return 1;
    double low = kTooSmall;
    double high = 1;
    if (!holds(labelOutline(shape, size.width * low, size.height * low))) return 0;
    for (int i = 0; i < 12; ++i) {
      const double share = (low + high) / 2;
      (holds(labelOutline(shape, size.width * share, size.height * share)) ? low : high) = share;
    }
    return low;
  }
};

/// The size that is asked for; sides left open follow the layer below.
Size wantedSize(const Parameters& parameters, const Polygon& below) {
  const Bounds box = bounds(below);
  const double inset = 2 * parameters.mm("inset");
  Size size{parameters.mm("width"), parameters.mm("height")};
  const bool round = isRound(shapeOf(parameters));
  if (round && size.width == 0) size.width = size.height;
  if (round && size.height == 0) size.height = size.width;
  const bool open = size.width == 0 && size.height == 0;
  if (size.width == 0) size.width = box.width() - inset;
  if (size.height == 0) size.height = box.height() - inset;
  if (round && open) size.width = size.height = std::min(size.width, size.height);
  return {std::max(size.width, 0.1), std::max(size.height, 0.1)};
}

bool leftOpen(const Parameters& parameters) {
  return parameters.length("width") == Length() && parameters.length("height") == Length();
}

Problem tooLarge(const Extra& extra, std::size_t number, Size size, double share, ToolGrid grid) {
  const double longer = std::max(size.width, size.height);
  return {
      ProblemCode::LayerTooLarge,
      extra.kind,
      {static_cast<std::int64_t>(number), Length::mm(longer), onGridBelow(longer * share, grid)}};
}

Result<StackLayer> layerOn(const StackLayer& below, const Extra& extra, std::size_t index,
                           ToolGrid grid) {
  const ExtraLayer& wanted = extra.layers[index];
  const Parameters& own = wanted.parameters;
  if (Problems limits =
          checkLimits(extra.kind, layerParameters(), own, {wanted.card.caliper, grid});
      !limits.empty())
    return std::move(limits.front());
  const LabelShape shape = shapeOf(own);
  const Polygon under = placedOutline(below);
  const double inset = leftOpen(own) ? own.mm("inset") : 0;
  const Ground ground{under, inset, below.middle + shiftOf(own), turnOf(own)};
  Size size = wantedSize(own, below.outline);
  const bool overhangs = own.flag("overhang");
  const double share = overhangs ? 1 : ground.shareOf(shape, size);
  if (share < 1 && (!leftOpen(own) || share == 0))
    return tooLarge(extra, index + 1, size, share, grid);
  if (share < 1) {
    // Width and height follow what is below, and go down to the grid together.
    const double width = onGridBelow(size.width * share, grid).mm();
    const double height = onGridBelow(size.height * share, grid).mm();
    if (std::min(width, height) < kSmallestLayer)
      return tooLarge(extra, index + 1, size, share, grid);
    size = {width, height};
    if (!ground.holds(labelOutline(shape, width, height))) {
      const double less = ground.shareOf(shape, size);
      size = {width * less, height * less};
    }
  }
  if (std::min(size.width, size.height) < kSmallestLayer)
    return Problem{ProblemCode::ParameterTooSmall,
                   "width",
                   {Length::mm(std::min(size.width, size.height)), Length::mm(kSmallestLayer)}};
  StackLayer layer{extra.kind + "-layer",
                   labelOutline(shape, size.width, size.height),
                   ground.middle,
                   ground.turn,
                   wanted.card,
                   wanted.lines,
                   {}};
  layer.facts = factsOf(own, layer.outline);
  layer.facts.number = below.facts.number + 1;
  layer.words = wordsLookOf(own);
  return layer;
}

ParameterRow holdChoice() {
  return choice("hold", worded("styles", "Held by"),
                worded("styles", "What holds it to what is under it."),
                {worded("styles", "Glue"), worded("styles", "Tape"), worded("styles", "Foam")});
}

ParameterRow foamMeasure() {
  return measure("foam", worded("styles", "Foam"),
                 worded("styles", "Thickness of the foam, where foam holds it."))
      .standard(mm(2))
      .from(mm(0.75))
      .to(mm(3.2));
}

ParameterRow punchedToggle() {
  return toggle("punched", worded("styles", "Punched"),
                worded("styles", "Made by a punch of this size, not cut."));
}

}  // namespace

std::vector<ParameterSpec> holdParameters() {
  return {holdChoice(), foamMeasure(), punchedToggle()};
}

std::vector<ParameterSpec> layerParameters() {
  std::vector<ParameterSpec> all{
      choice("shape", worded("styles", "Shape"), worded("styles", "Of the layer."), shapeWords()),
      measure("width", worded("styles", "Width"),
              worded("styles", "0 follows the layer below, less the inset."))
          .from(Length())
          .to(kLargestSide),
      measure("height", worded("styles", "Height"),
              worded("styles", "0 follows the layer below, less the inset."))
          .from(Length())
          .to(kLargestSide),
      measure("inset", worded("styles", "Inset"),
              worded("styles", "How much of the layer below is seen all round."))
          .standard(Length::inches(1, 8))
          .from(mm(0.5))
          .to(mm(50)),
      measure("across", worded("styles", "Across"),
              worded("styles", "To the right of the middle; less than 0 to the left."))
          .from(Length() - kLargestSide)
          .to(kLargestSide),
      measure("up", worded("styles", "Up"),
              worded("styles", "Above the middle; less than 0 below it."))
          .from(Length() - kLargestSide)
          .to(kLargestSide),
      number("turn", worded("styles", "Turn"), worded("styles", "Degrees against the clock."))
          .from(0)
          .to(359),
      holdChoice(),
      foamMeasure(),
      punchedToggle(),
      toggle("stamped", worded("styles", "Blank to stamp"),
             worded("styles", "Left empty, its words are stamped on.")),
      toggle("overhang", worded("styles", "May overhang"),
             worded("styles", "It may reach over the edge of what is under it."))};
  std::ranges::move(wordsParameters(), std::back_inserter(all));
  return all;
}

LayerFacts factsOf(const Parameters& parameters, const Polygon& outline) {
  LayerFacts facts;
  facts.hold = static_cast<LayerHold>(parameters.count("hold"));
  if (facts.hold == LayerHold::Foam) {
    facts.foam = parameters.length("foam");
    facts.foamDots = foamDotsFor(outline);
  }
  facts.punched = parameters.flag("punched");
  facts.stamped = parameters.flag("stamped");
  facts.overhangs = parameters.flag("overhang");
  return facts;
}

ExtraLayer standardLayer(const Card& card, ToolGrid grid) {
  ExtraLayer layer{{}, card, {}};
  layer.card.colours.pattern.reset();
  for (const ParameterSpec& spec : layerParameters())
    layer.parameters.setCount(spec.key, spec.standard);
  layer.parameters =
      placedOnGrid(layerParameters(), std::move(layer.parameters), {card.caliper, grid});
  return layer;
}

Result<ExtraLayer> withParameter(ExtraLayer layer, std::string_view key, std::string_view text,
                                 ToolGrid grid) {
  const std::vector<ParameterSpec> specs = layerParameters();
  const auto spec = std::ranges::find(specs, key, &ParameterSpec::key);
  if (spec == specs.end()) return Problem{ProblemCode::UnknownParameter, "layer", {excerpt(key)}};
  const Result<std::int64_t> raw = readSpec(*spec, text, grid);
  if (!raw) return raw.problem();
  layer.parameters.setCount(key, *raw);
  return layer;
}

Result<std::vector<StackLayer>> withLayers(std::vector<StackLayer> stack, const Extra& extra,
                                           ToolGrid grid) {
  for (std::size_t i = 0; i < extra.layers.size(); ++i) {
    Result<StackLayer> layer = layerOn(stack.back(), extra, i, grid);
    if (!layer) return layer.problem();
    stack.push_back(std::move(layer).value());
  }
  return stack;
}

Polygon placedOutline(const StackLayer& layer) {
  return placed(layer.outline, layer.middle, layer.turn);
}

double heightOf(const std::vector<StackLayer>& stack) {
  double height = 0;
  for (const StackLayer& layer : stack) height += layer.card.caliper.mm() + layer.facts.foam.mm();
  return height;
}

int foamDotsFor(const Polygon& outline) {
  constexpr double kOneIsEnough = 20;  // mm
  constexpr double kApart = 40;        // mm
  constexpr double kInside = 3;        // mm
  const Bounds box = bounds(outline);
  if (std::max(box.width(), box.height()) < kOneIsEnough) return 1;
  const auto gaps = [](double side) {
    return std::max(1, static_cast<int>(std::ceil((side - 2 * kInside) / kApart)));
  };
  const int across = gaps(box.width());
  const int up = gaps(box.height());
  // Those round the edge; what is wider is held in its middle too.
  const int inner = std::max(0, across - 1) * std::max(0, up - 1);
  return std::max(3, 2 * (across + up) + inner);
}

}  // namespace creasewright
