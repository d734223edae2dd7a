#include <algorithm>

#include "extras/beside_face.h"
#include "extras/face_room.h"
#include "extras/flat_piece.h"
#include "extras/free_place.h"
#include "extras/kinds.h"
#include "styles/parameter_rows.h"

namespace creasewright {
namespace {

enum class LabelShape { Rectangle, Circle, Oval, Scallop };

constexpr double kWave = 8;   // mm from tip to tip of a scalloped edge
constexpr double kClear = 1;  // mm to the edges of the face
constexpr double kHole = 4;   // mm across
constexpr Length kSmallest = mm(10);

struct LabelSize {
  Length width;
  Length height;
};

LabelShape shapeOf(const Extra& extra) {
  return static_cast<LabelShape>(extra.parameters.count("shape"));
}

Polygon outlineOf(LabelShape shape, LabelSize size) {
  const double w = size.width.mm();
  const double h = size.height.mm();
  switch (shape) {
    case LabelShape::Rectangle:
      return {{0, 0}, {w, 0}, {w, h}, {0, h}};
    case LabelShape::Circle:
    case LabelShape::Oval:
      return ellipse({w / 2, h / 2}, w / 2, h / 2);
    case LabelShape::Scallop:
      return scallop(w, h, kWave);
  }
  return {};
}

/// The sizes chosen, or for those left open whole steps of the punches within `room`; circles are
/// as high as wide.
LabelSize sizeOf(const Extra& extra, Point room, ToolGrid grid) {
  LabelSize size{extra.parameters.length("width"), extra.parameters.length("height")};
  const bool circle = shapeOf(extra) == LabelShape::Circle;
  if (circle) room.x = room.y = std::min(room.x, room.y);
  if (circle && size.width > Length()) size.height = size.width;
  if (circle && size.height > Length()) size.width = size.height;
  if (size.width == Length()) size.width = std::max(kSmallest, wholeSteps(room.x, grid));
  if (size.height == Length()) size.height = std::max(kSmallest, wholeSteps(room.y, grid));
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

void addLayer(const char* name, const Extra& extra, LabelSize size, const HostFace& face,
              double lift, ExtraParts& parts) {
  const Polygon outline = outlineOf(shapeOf(extra), size);
  const Bounds box = bounds(outline);
  const bool top = std::string_view(name) == "label";
  ExtraPiece piece{flatPiece(name, {outline, {}}, top ? extra.lines : std::vector<std::string>{}),
                   Placing::OnFace};
  piece.faces.push_back(placeOn(face, (box.high - box.low) / 2, lift));
  parts.pieces.push_back(std::move(piece));
}

/// An outline about its own middle.
Polygon about(Polygon outline) {
  const Bounds box = bounds(outline);
  for (Point& p : outline) p = p - (box.low + box.high) / 2;
  return outline;
}

struct Search {
  const Extra& extra;
  const Host& host;

  [[nodiscard]] LabelSize sizeAt(const HostFace& face, double share) const {
    return sizeOf(extra, sizesOf(face) * share, host.bench.grid);
  }
  /// The outermost layer about its middle.
  [[nodiscard]] Polygon shapeOfSize(LabelSize size) const {
    return about(outlineOf(shapeOf(extra),
                           extra.parameters.flag("mat") ? larger(size, host.bench.grid) : size));
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
    return laidUpright(face, offset(subtract(cardOf(face), taken), -kClear));
  }
};

ExtraParts labelAt(const Search& search, const HostFace& face, const Spot& spot) {
  const Extra& extra = search.extra;
  const HostFace there = movedTo(face, spot.place);
  const LabelSize size = search.sizeAt(face, spot.share);
  const double layer = extra.card.caliper.mm();
  double lift = search.host.bench.caliper.mm() / 2 + search.host.onFaces.mm() + layer;
  ExtraParts parts;
  if (extra.parameters.flag("mat")) {
    addLayer("label-mat", extra, larger(size, search.host.bench.grid), there, lift, parts);
    lift += layer + 0.1;
  }
  addLayer("label", extra, size, there, lift, parts);
  const Polygon outline = inPanel(there, search.shapeAt(face, spot.share));
  parts.warnings = coveredBy(extra, search.host, face, region(outline));
  parts.taken.push_back({extra.kind, face.piece, face.panel, outline});
  return parts;
}

/// The size as large as tried least on the first face, and what of it fits there.
Problem refusal(const Search& search, const HostFace& face) {
  const LabelSize size = search.sizeAt(face, kLeastShare);
  const Region room = search.room(face, false);
  const auto fits = [&](double share) {
    const LabelSize part{Length::mm(size.width.mm() * share), Length::mm(size.height.mm() * share)};
    return !placesFor(search.shapeOfSize(part), room).empty();
  };
  return noRoomFor(search.extra, search.host, std::max(size.width, size.height), kSmallest, fits);
}

/// On the first face that has room for it where it is seen, or else where it is covered.
Result<ExtraParts> buildLabel(const Extra& extra, const Host& host) {
  const Result<std::vector<HostFace>> faces = facesFor(extra, host);
  if (!faces) return faces.problem();
  const Search search{extra, host};
  for (const bool seen : {true, false})
    for (const HostFace& face : *faces) {
      const Region room = search.room(face, seen);
      const auto spot =
          firstSpot([&](double share) { return placesFor(search.shapeAt(face, share), room); });
      if (spot) return labelAt(search, face, *spot);
    }
  return refusal(search, faces->front());
}

/// A label that hangs on a ribbon: no face, a hole near its top.
Result<ExtraParts> buildTag(const Extra& extra, const Host& host) {
  const ToolGrid grid = host.bench.grid;
  const LabelSize size = sizeOf(extra, {50, 75}, grid);
  if (std::min(size.width, size.height).mm() < 3 * kHole)
    return Problem{ProblemCode::ParameterTooSmall,
                   "width",
                   {std::min(size.width, size.height), Length::mm(3 * kHole)}};
  const Polygon outline = outlineOf(shapeOf(extra), size);
  const double shape = shapeOf(extra) == LabelShape::Scallop ? kWave / 2 : 0;
  const Point hole{size.width.mm() / 2, size.height.mm() - 1.25 * kHole - shape};
  Polygon opening = ellipse(hole, kHole / 2, kHole / 2);
  std::ranges::reverse(opening);
  ExtraParts parts;
  parts.pieces.push_back({flatPiece("tag", {outline, {opening}}, extra.lines), Placing::Hanging});
  if (extra.parameters.flag("mat"))
    parts.pieces.push_back(
        {flatPiece("tag-mat", {outlineOf(shapeOf(extra), larger(size, grid)), {}}),
         Placing::Hanging});
  return parts;
}

std::vector<ParameterSpec> labelParameters() {
  return {choice("shape", worded("styles", "Shape"), worded("styles", "Of the label."),
                 {worded("styles", "Rectangle"), worded("styles", "Circle"),
                  worded("styles", "Oval"), worded("styles", "Scalloped")}),
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

}  // namespace

ExtraKind labelExtra() {
  return {.id = "label",
          .title = worded("styles", "Label"),
          .summary = worded("styles", "Glued onto a face, with a mat layer one size larger."),
          .act = ExtraAct::GlueLabelOn,
          .onFace = true,
          .written = true,
          .words = {.panels = {{"label", worded("panels", "label")},
                               {"label-mat", worded("panels", "mat layer")}},
                    .pieces = {{"label", worded("pieces", "label")},
                               {"label-mat", worded("pieces", "mat layer")}}},
          .parameters = labelParameters(),
          .build = buildLabel};
}

ExtraKind tagExtra() {
  return {.id = "tag",
          .title = worded("styles", "Tag"),
          .summary = worded("styles", "Hangs on a ribbon by a punched hole."),
          .act = ExtraAct::TieTagOn,
          .written = true,
          .words = {.panels = {{"tag", worded("panels", "tag")},
                               {"tag-mat", worded("panels", "mat layer of the tag")}},
                    .pieces = {{"tag", worded("pieces", "tag")},
                               {"tag-mat", worded("pieces", "mat layer of the tag")}}},
          .parameters = labelParameters(),
          .build = buildTag};
}

}  // namespace creasewright
