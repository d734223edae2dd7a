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

Ground groundOf(const StackLayer& below, const Parameters& own) {
  const double inset = leftOpen(own) ? own.mm("inset") : 0;
  return {placedOutline(below), inset, below.middle + shiftOf(own), turnOf(own)};
}

/// Where width and height follow what is below: on the grid together where all of it has no room.
std::optional<Size> fittingSize(const StackLayer& below, const Parameters& own, ToolGrid grid) {
  const Ground ground = groundOf(below, own);
  const Size size = wantedSize(own, below.outline);
  const double share = ground.shareOf(shapeOf(own), size);
  if (share == 1 && std::min(size.width, size.height) >= kSmallestLayer) return size;
  Size less{onGridBelow(size.width * share, grid).mm(),
            onGridBelow(size.height * share, grid).mm()};
  if (share == 0 || std::min(less.width, less.height) < kSmallestLayer) return std::nullopt;
  if (!ground.holds(labelOutline(shapeOf(own), less.width, less.height))) {
    const double part = ground.shareOf(shapeOf(own), less);
    less = {less.width * part, less.height * part};
  }
  return less;
}

/// The inset and the most that leaves room for a layer, on the grid; where not even the least does,
/// the layer is too large.
Problem insetTooLarge(const StackLayer& below, const Extra& extra, std::size_t index,
                      ToolGrid grid) {
  Parameters own = extra.layers[index].parameters;
  const Length inset = own.length("inset");
  const double least = 0.5;  // mm
  const auto leaves = [&](double mm) {
    own.set("inset", Length::mm(mm));
    return fittingSize(below, own, grid).has_value();
  };
  const auto number = static_cast<std::int64_t>(index + 1);
  if (!leaves(least)) {
    const double share = groundOf(below, own).shareOf(shapeOf(own), wantedSize(own, below.outline));
    return tooLarge(extra, index + 1, wantedSize(own, below.outline), share, grid);
  }
  double low = least;
  double high = inset.mm();
  for (int i = 0; i < 10; ++i) {
    const double middle = (low + high) / 2;
    (leaves(middle) ? low : high) = middle;
  }
  // What goes down to the grid may leave no room for once.
  Length most = onGridBelow(low, grid);
  if (most.mm() < least || !leaves(most.mm())) most = Length::mm(low);
  return {ProblemCode::LayerInsetLarge, extra.kind, {number, inset, most}};
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
  const Ground ground = groundOf(below, own);
  Size size = wantedSize(own, below.outline);
  if (!own.flag("overhang")) {
    if (leftOpen(own)) {
      const std::optional<Size> fitting = fittingSize(below, own, grid);
      if (!fitting) return insetTooLarge(below, extra, index, grid);
      size = *fitting;
    } else if (const double share = ground.shareOf(shape, size); share < 1) {
      return tooLarge(extra, index + 1, size, share, grid);
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
