#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

#include "extras/beside_face.h"
#include "extras/face_room.h"
#include "extras/flat_piece.h"
#include "extras/for_show.h"
#include "extras/free_place.h"
#include "extras/kinds.h"
#include "extras/layer_stack.h"
#include "extras/place_measures.h"
#include "extras/string_round.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

constexpr double kLabelClear = 1;      // mm to the edges of the face
constexpr double kHole = 4;            // mm across
constexpr double kLeastRoundHole = 2;  // mm of card
constexpr double kNoArea = 1e-3;       // mm2
constexpr Length kSmallestLabel = mm(10);

struct LabelSize {
  Length width;
  Length height;
};

LabelShape shapeOf(const Extra& extra) {
  return static_cast<LabelShape>(extra.parameters.count("shape"));
}

Polygon outlineOf(LabelShape shape, LabelSize size) {
  return labelOutline(shape, size.width.mm(), size.height.mm());
}

/// The sizes chosen, or for those left open whole steps of the punches within `room`; circles are
/// as high as wide.
LabelSize sizeOf(const Extra& extra, Point room, ToolGrid grid) {
  LabelSize size{extra.parameters.length("width"), extra.parameters.length("height")};
  const bool circle = isRound(shapeOf(extra));
  if (circle) room.x = room.y = std::min(room.x, room.y);
  if (circle && size.width > Length()) size.height = size.width;
  if (circle && size.height > Length()) size.width = size.height;
  if (size.width == Length()) size.width = std::max(kSmallestLabel, wholeSteps(room.x, grid));
  if (size.height == Length()) size.height = std::max(kSmallestLabel, wholeSteps(room.y, grid));
  if (circle) size.width = size.height = std::min(size.width, size.height);
  return size;
}

/// The layer under the label, one step larger.
LabelSize larger(LabelSize size, ToolGrid grid) {
  return {size.width + punchStep(grid), size.height + punchStep(grid)};
}

/// Width and height of a face as it stands.
Point sizesOf(const HostFace& face) {
  const Bounds box = bounds(laidUpright(face, face.area.outer));
  return {box.width(), box.height()};
}

/// An outline about its own middle.
Polygon about(Polygon outline) {
  const Bounds box = bounds(outline);
  for (Point& p : outline) p = p - (box.low + box.high) / 2;
  return outline;
}

/// Whether a larger one of the same form might let a smaller one look out between its lobes or in
/// its notches.
bool isUneven(LabelShape shape) {
  return isWavy(shape) || shape == LabelShape::Banner || shape == LabelShape::Heart ||
         shape == LabelShape::Star || shape == LabelShape::Ticket;
}

/// With bounds on marks of the tools, where rounding of arcs alone keeps them off.
Polygon onMarks(Polygon outline, ToolGrid grid) {
  constexpr double kRounding = 0.1;  // mm
  if (grid.isNone()) return outline;
  const Bounds box = bounds(outline);
  const auto wanted = [&](double size) {
    const double near = grid.nearest(Length::mm(size)).mm();
    return std::abs(near - size) < kRounding ? near : size;
  };
  const double across = wanted(box.width()) / box.width();
  const double up = wanted(box.height()) / box.height();
  for (Point& p : outline) p = {p.x * across, p.y * up};
  return outline;
}

/// The layer under the label, about the label's middle: an uneven one goes round it at the same
/// distance everywhere.
Polygon matOutline(LabelShape shape, LabelSize size, ToolGrid grid) {
  if (!isUneven(shape)) return about(outlineOf(shape, larger(size, grid)));
  const Region label = region(about(outlineOf(shape, size)));
  return onMarks(offset(label, punchStep(grid).mm() / 2).front().outer, grid);
}

/// Mat and label, which are of one card and lie straight, and the layers upon them.
Result<std::vector<StackLayer>> stackOf(const Extra& extra, LabelSize size, ToolGrid grid) {
  std::vector<StackLayer> stack;
  const auto add = [&](const char* name, Polygon outline, std::vector<std::string> lines) {
    const Bounds box = bounds(outline);
    const Point middle = (box.low + box.high) / 2;
    stack.push_back({name, std::move(outline), middle, {}, extra.card, std::move(lines), {}});
    stack.back().facts.number = static_cast<int>(stack.size()) - 1;
  };
  if (extra.parameters.flag("mat")) add("label-mat", matOutline(shapeOf(extra), size, grid), {});
  add("label", about(outlineOf(shapeOf(extra), size)), extra.lines);
  stack.back().words = wordsLookOf(extra.parameters);
  // What holds the lowest layer holds the whole.
  const int number = stack.front().facts.number;
  stack.front().facts = factsOf(extra.parameters, stack.front().outline);
  stack.front().facts.number = number;
  // The mat is a step larger than the label, of which there may be no punch.
  stack.front().facts.punched = false;
  stack.back().facts.punched = extra.parameters.flag("punched");
  return withLayers(std::move(stack), extra, grid);
}

/// The anchors after the one that lets the place be found, in the order of their words.
struct Pull {
  int across;
  int up;
};
constexpr std::array<Pull, 9> kAnchors{
    {{0, 0}, {0, 1}, {0, -1}, {-1, 0}, {1, 0}, {-1, 1}, {1, 1}, {-1, -1}, {1, -1}}};

std::vector<Worded> anchorWords() {
  return {worded("styles", "Where there is room"),
          worded("styles", "Middle"),
          worded("styles", "Top"),
          worded("styles", "Bottom"),
          worded("styles", "Left"),
          worded("styles", "Right"),
          worded("styles", "Top left"),
          worded("styles", "Top right"),
          worded("styles", "Bottom left"),
          worded("styles", "Bottom right")};
}

struct LabelSearch {
  const Extra& extra;
  const Host& host;

  [[nodiscard]] LabelSize sizeAt(const HostFace& face, double share) const {
    return sizeOf(extra, sizesOf(face) * share, host.bench.grid);
  }
  [[nodiscard]] Angle turn() const { return turnOf(extra.parameters); }
  /// The lowest layer about its middle, as it is turned on the face.
  [[nodiscard]] Polygon shapeOfSize(LabelSize size) const {
    const Polygon straight = extra.parameters.flag("mat")
                                 ? matOutline(shapeOf(extra), size, host.bench.grid)
                                 : about(outlineOf(shapeOf(extra), size));
    if (extra.parameters.count("turn") == 0) return straight;
    const double c = std::cos(turn().radians());
    const double s = std::sin(turn().radians());
    Polygon turned;
    for (const Point& p : straight) turned.push_back({c * p.x - s * p.y, s * p.x + c * p.y});
    return turned;
  }
  [[nodiscard]] Polygon shapeAt(const HostFace& face, double share) const {
    return shapeOfSize(sizeAt(face, share));
  }
  /// Where a label may lie on a face, as it stands; `seen` leaves out what hides it later.
  [[nodiscard]] Region room(const HostFace& face, bool seen) const {
    Region taken = joined(onFace(host, face));
    if (seen)
      for (const Overlay& cover : overlaysOf(host, face))
        taken.insert(taken.end(), cover.area.begin(), cover.area.end());
    return laidUpright(face, offset(subtract(cardOf(face), taken), -kLabelClear));
  }
  [[nodiscard]] bool isPlaced() const {
    return extra.parameters.count("anchor") > 0 || isShifted(extra.parameters);
  }
  /// Where its own place puts a shape on a face.
  [[nodiscard]] Point ownPlace(const HostFace& face, const Polygon& shape) const {
    const auto anchor = static_cast<std::size_t>(extra.parameters.count("anchor"));
    const Pull pull = kAnchors.at(anchor == 0 ? 0 : anchor - 1);
    const Bounds whole = bounds(laidUpright(face, face.area.outer));
    const Bounds own = bounds(shape);
    const auto at = [](int side, double low, double high, double ownLow, double ownHigh) {
      if (side == 0) return 0.0;
      return side > 0 ? high - kLabelClear - kHair - ownHigh : low + kLabelClear + kHair - ownLow;
    };
    return Point{at(drawnAcross(pull.across), whole.low.x, whole.high.x, own.low.x, own.high.x),
                 at(pull.up, whole.low.y, whole.high.y, own.low.y, own.high.y)} +
           shiftOn(whole, extra.parameters);
  }
  /// The largest share that stays on the face at its own place; where it may overhang, the first.
  [[nodiscard]] std::optional<Spot> ownSpot(const HostFace& face) const {
    const Region free = room(face, false);
    for (double share = kShareOfFace; share > kLeastShare - kShareStep / 2; share -= kShareStep) {
      const Polygon shape = shapeAt(face, share);
      const Point there = ownPlace(face, shape);
      Polygon laid = shape;
      for (Point& p : laid) p = p + there;
      const bool held = locate(there, laidUpright(face, face.area.outer)) != Side::Outside;
      if ((extra.parameters.flag("overhang") && held) ||
          area(subtract(region(laid), free)) < kNoArea)
        return Spot{share, there};
    }
    return std::nullopt;
  }
};

Angle turnedBy(Angle a, Angle b) { return Angle::degrees(a.degrees() + b.degrees()); }

Raised raisedBy(const Extra& extra, const std::vector<StackLayer>& stack, const Host& host,
                const HostFace& face, const Polygon& outline) {
  const HostPiece& piece = host.pieces[static_cast<std::size_t>(face.piece)];
  const Transform& own = (*piece.folded)[static_cast<std::size_t>(face.panel)];
  const Transform place = piece.place && !host.box ? piece.place->after(own) : own;
  Raised raised{extra.kind, place.normal() * -1, {}, heightOf(stack), false};
  for (const Point& p : outline) raised.corners.push_back(place.apply(p));
  raised.foam = std::ranges::any_of(
      stack, [](const StackLayer& layer) { return layer.facts.hold == LayerHold::Foam; });
  return raised;
}

Result<ExtraParts> labelAt(const LabelSearch& search, const HostFace& face, const Spot& spot) {
  const Extra& extra = search.extra;
  HostFace there = movedTo(face, spot.place);
  const Polygon outline = inPanel(there, search.shapeAt(face, spot.share));
  there.upright = turnedBy(there.upright, search.turn());
  const Result<std::vector<StackLayer>> stack =
      stackOf(extra, search.sizeAt(face, spot.share), search.host.bench.grid);
  if (!stack) return stack.problem();
  constexpr double kApart = 0.1;  // mm between layers, so that pictures tell them apart
  double lift = search.host.bench.caliper.mm() / 2 + search.host.onFaces.mm();
  ExtraParts parts;
  for (const StackLayer& layer : *stack) {
    lift += layer.card.caliper.mm() + layer.facts.foam.mm();
    ExtraPiece piece{flatPiece(layer.name, {layer.outline, {}}, layer.lines, layer.words),
                     Placing::OnFace};
    HostFace own = movedTo(there, layer.middle);
    own.upright = turnedBy(own.upright, layer.turn);
    const Bounds box = bounds(layer.outline);
    piece.faces.push_back(placeOn(own, (box.high - box.low) / 2, lift));
    piece.card = layer.card;
    piece.layer = layer.facts;
    parts.pieces.push_back(std::move(piece));
    lift += kApart;
  }
  parts.warnings = coveredBy(extra, search.host, face, region(outline));
  parts.taken.push_back({extra.kind, face.piece, face.panel, outline});
  parts.raised = raisedBy(extra, *stack, search.host, face, outline);
  return parts;
}

/// The size as large as tried least on the first face, and what of it fits there.
Problem refusal(const LabelSearch& search, const HostFace& face) {
  const LabelSize size = search.sizeAt(face, kLeastShare);
  const Region room = search.room(face, search.host.seenOnly);
  const auto fits = [&](double share) {
    const LabelSize part{Length::mm(size.width.mm() * share), Length::mm(size.height.mm() * share)};
    return !placesFor(search.shapeOfSize(part), room).empty();
  };
  if (search.extra.parameters.flag("overhang"))
    return {ProblemCode::ExtraMiddleOff, search.extra.kind, {faceName(search.host, face)}};
  if (search.isPlaced() && fits(1))
    return {ProblemCode::ExtraOffFace, search.extra.kind, {faceName(search.host, face)}};
  return noRoomFor(search.extra, search.host, longerOf(size.width, size.height), kSmallestLabel,
                   fits);
}

/// On the first face that has room for it where it is seen, or else where it is covered.
Result<ExtraParts> buildLabel(const Extra& extra, const Host& host) {
  const Result<std::vector<HostFace>> faces = facesFor(extra, host);
  if (!faces) return faces.problem();
  const LabelSearch search{extra, host};
  if (search.isPlaced() || extra.parameters.flag("overhang")) {
    for (const HostFace& face : *faces)
      if (const auto spot = search.ownSpot(face)) return labelAt(search, face, *spot);
    return refusal(search, faces->front());
  }
  for (const bool seen : {true, false}) {
    if (!seen && host.seenOnly) break;
    for (const HostFace& face : *faces) {
      const Region room = search.room(face, seen);
      const auto spot =
          firstSpot([&](double share) { return placesFor(search.shapeAt(face, share), room); });
      if (spot) return labelAt(search, face, *spot);
    }
  }
  return refusal(search, faces->front());
}

/// Where a tag is punched: on its upright middle, near its top or, where that ends in a tip, a
/// notch or nowhere, as high as there is card all round.
std::optional<Point> holeIn(LabelShape shape, LabelSize size) {
  const Region room = offset(region(outlineOf(shape, size)), -(kHole / 2 + kLeastRoundHole));
  const Point usual{size.width.mm() / 2,
                    size.height.mm() - 1.25 * kHole - (isWavy(shape) ? kWave / 2 : 0)};
  std::optional<Point> highest;
  for (const Area& part : room) {
    if (locate(usual, part.outer) != Side::Outside) return usual;
    for (std::size_t i = 0; i < part.outer.size(); ++i) {
      const Point a = part.outer[i];
      const Point b = part.outer[(i + 1) % part.outer.size()];
      if ((a.x > usual.x) == (b.x > usual.x)) continue;
      const double y = a.y + (b.y - a.y) * (usual.x - a.x) / (b.x - a.x);
      if (!highest || y > highest->y) highest = Point{usual.x, y};
    }
  }
  return highest;
}

/// The narrower side of a tag of the same proportions that can be punched.
Length leastForHole(LabelShape shape, LabelSize size) {
  constexpr double kStep = 1.05;
  constexpr int kSteps = 80;
  double times = 1;
  const auto sized = [&] {
    return LabelSize{Length::mm(size.width.mm() * times), Length::mm(size.height.mm() * times)};
  };
  for (int i = 0; i < kSteps && !holeIn(shape, sized()); ++i) times *= kStep;
  return std::max(Length::mm(3 * kHole),
                  Length::mm(std::min(size.width, size.height).mm() * times));
}

/// A label that hangs on a ribbon: no face, a hole near its top.
Result<ExtraParts> buildTag(const Extra& extra, const Host& host) {
  const ToolGrid grid = host.bench.grid;
  const LabelSize size = sizeOf(extra, {50, 75}, grid);
  const Length narrower = std::min(size.width, size.height);
  const std::optional<Point> hole = holeIn(shapeOf(extra), size);
  if (!hole || narrower.mm() < 3 * kHole)
    return Problem{ProblemCode::ParameterTooSmall,
                   size.height < size.width ? "height" : "width",
                   {narrower, leastForHole(shapeOf(extra), size)}};
  const Polygon outline = outlineOf(shapeOf(extra), size);
  Polygon opening = ellipse(*hole, kHole / 2, kHole / 2);
  std::ranges::reverse(opening);
  ExtraParts parts;
  parts.pieces.push_back(
      {flatPiece("tag", {outline, {opening}}, extra.lines, wordsLookOf(extra.parameters)),
       Placing::Hanging});
  // The mat is drawn about its middle.
  Polygon holeInMat = opening;
  for (Point& p : holeInMat) p = p - Point{size.width.mm(), size.height.mm()} / 2;
  if (extra.parameters.flag("mat"))
    parts.pieces.push_back(
        {flatPiece("tag-mat", {matOutline(shapeOf(extra), size, grid), {holeInMat}}),
         Placing::Hanging});
  if (host.pieces.empty()) return parts;  // the host is a ribbon
  Result<RibbonNeed> own = stringRound(extra, host);
  if (!own) return own.problem();
  parts.ribbon = std::move(own).value();
  return parts;
}

std::vector<ParameterSpec> labelParameters() {
  return {
      choice("shape", worded("styles", "Shape"), worded("styles", "Of the label."), shapeWords()),
      measure("width", worded("styles", "Width"),
              worded("styles", "0 chooses a whole step of the punches."))
          .from(Length())
          .to(kLargestSide),
      measure("height", worded("styles", "Height"),
              worded("styles", "0 chooses a whole step of the punches."))
          .from(Length())
          .to(kLargestSide),
      toggle("mat", worded("styles", "Mat layer"),
             worded("styles", "A layer under it, one step of the punches larger."))
          .on()};
}

std::vector<ParameterSpec> withWords(std::vector<ParameterSpec> all) {
  std::ranges::move(wordsParameters(), std::back_inserter(all));
  return all;
}

std::vector<ParameterSpec> placedLabelParameters() {
  std::vector<ParameterSpec> all = labelParameters();
  all.push_back(choice("anchor", worded("styles", "Place"),
                       worded("styles", "On its face; it follows when the face grows."),
                       anchorWords()));
  std::ranges::move(placeMeasures(), std::back_inserter(all));
  all.push_back(toggle("overhang", worded("styles", "May overhang"),
                       worded("styles", "It may reach over the edge of what is under it.")));
  std::ranges::move(holdParameters(), std::back_inserter(all));
  return withWords(std::move(all));
}

}  // namespace

ExtraKind labelExtra() {
  return {.id = "label",
          .title = worded("styles", "Label"),
          .summary = worded("styles", "Glued onto a face, with a mat layer one size larger."),
          .act = ExtraAct::GlueLabelOn,
          .onFace = true,
          .written = true,
          .layered = true,
          .hasFaces = true,
          .carriers = {Carrier::Box, Carrier::Face},
          .words = {.panels = {{"label", worded("panels", "label")},
                               {"label-mat", worded("panels", "mat layer")},
                               {"label-layer", worded("panels", "layer of the label")}},
                    .pieces = {{"label", worded("pieces", "label")},
                               {"label-mat", worded("pieces", "mat layer")},
                               {"label-layer", worded("pieces", "layer of the label")}}},
          .parameters = placedLabelParameters(),
          .build = buildLabel};
}

ExtraKind tagExtra() {
  return {
      .id = "tag",
      .title = worded("styles", "Tag"),
      .summary = worded("styles", "Hangs by a punched hole, on a ribbon or a string of its own."),
      .act = ExtraAct::TieTagOn,
      .written = true,
      .carriers = {Carrier::Box, Carrier::RibbonOn},
      .words = {.panels = {{"tag", worded("panels", "tag")},
                           {"tag-mat", worded("panels", "mat layer of the tag")}},
                .pieces = {{"tag", worded("pieces", "tag")},
                           {"tag-mat", worded("pieces", "mat layer of the tag")}}},
      .parameters = withWords(labelParameters()),
      .build = buildTag};
}

}  // namespace creasewright
