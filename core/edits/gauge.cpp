#include "edits/gauge.h"

#include <cmath>

#include "edits/kinds/apply_edits.h"
#include "fit/blank_on_grid.h"
#include "net/flat_net.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

/// A line of a net as it is found, with what it is known by in another one.
struct Found {
  HandlePlace place;
  std::string name;
  Point onBlank;  // its middle
};

/// A piece of a style, laid flat.
struct Laid {
  Net net;
  FlatNet flat;
};

std::optional<Found> edgeAt(const Laid& piece, std::size_t panel, std::size_t edge) {
  const Polygon& outline = piece.flat.panels[panel];
  const Point a = outline[edge];
  const Point b = outline[(edge + 1) % outline.size()];
  if (distance(a, b) < 1e-9) return std::nullopt;
  const Bounds first = bounds(piece.flat.panels.front());
  const Point origin = (first.low + first.high) / 2;
  const Point middle = (a + b) / 2;
  const std::vector<std::string>& names = piece.net.panels[panel].edges;
  // Corners run counter-clockwise: outwards is to the right.
  return Found{{middle - origin, turnLeft(unit(b - a)) * -1},
               edge < names.size() ? names[edge] : std::string(),
               middle};
}

/// The same line where the corners are others: it has its name and its direction.
std::optional<Found> edgeLike(const Laid& piece, std::size_t panel, const Found& like) {
  std::optional<Found> best;
  for (std::size_t edge = 0; edge < piece.flat.panels[panel].size(); ++edge) {
    const std::optional<Found> other = edgeAt(piece, panel, edge);
    if (!other || other->name != like.name || dot(other->place.normal, like.place.normal) < 0.9999)
      continue;
    const auto away = [&](const Found& f) { return distance(f.place.middle, like.place.middle); };
    if (!best || away(*other) < away(*best)) best = other;
  }
  return best;
}

/// The line in this net. `like` is the line before, if any.
std::optional<Found> findIn(const Laid& piece, const Handle& handle, const Found* like) {
  const std::optional<int> number = piece.net.find(handle.panel);
  if (!number || handle.edge < 0 || handle.edge >= handle.corners) return std::nullopt;
  const auto panel = static_cast<std::size_t>(*number);
  if (static_cast<int>(piece.flat.panels[panel].size()) == handle.corners)
    return edgeAt(piece, panel, static_cast<std::size_t>(handle.edge));
  return like == nullptr ? std::nullopt : edgeLike(piece, panel, *like);
}

/// A piece as these measures make it; nothing beyond a limit.
std::optional<Laid> layOut(const Style& style, const Design& design, const Parameters& wanted,
                           int index, Blanks blanks) {
  const Workbench bench = benchOf(design);
  const Parameters parameters =
      design.ownStyle ? withRules(*design.ownStyle, style, wanted, bench, {}) : wanted;
  if (!checkLimits(style, parameters, bench).empty()) return std::nullopt;
  const bool asBuilt = blanks == Blanks::OnGrid;
  std::vector<Piece> pieces =
      style.build(asBuilt ? blanksOnGrid(style, parameters, bench) : parameters, bench);
  if (const std::vector<Edit> edits = allEdits(design); !edits.empty())
    applyEdits(edits, parameters, lengthKeys(style.parameters), bench, pieces);
  if (index < 0 || index >= static_cast<int>(pieces.size())) return std::nullopt;
  Laid laid{std::move(pieces[static_cast<std::size_t>(index)].net), {}};
  laid.flat = flatten(laid.net);
  return laid;
}

std::optional<double> sizeOf(const Laid& piece, const BlankDistance& distance, const Found* like) {
  if (!distance.to) return distance.fromLeft ? piece.flat.width : piece.flat.height;
  const auto line = findIn(piece, *distance.to, like);
  if (!line) return std::nullopt;
  return distance.fromLeft ? line->onBlank.x : line->onBlank.y;
}

int pieceOf(const Movable& thing) {
  return std::visit([](const auto& each) { return each.piece; }, thing);
}

const Handle* lineOf(const Movable& thing) {
  if (const auto* handle = std::get_if<Handle>(&thing)) return handle;
  const auto& to = std::get<BlankDistance>(thing).to;
  return to ? &*to : nullptr;
}

}  // namespace

std::optional<HandlePlace> placeOfHandle(const Design& design, const Handle& handle) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return std::nullopt;
  const auto piece = layOut(**style, design, design.parameters, handle.piece, Blanks::OnGrid);
  const auto found = piece ? findIn(*piece, handle, nullptr) : std::nullopt;
  return found ? std::optional(found->place) : std::nullopt;
}

std::optional<double> distanceOf(const Design& design, const BlankDistance& distance) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return std::nullopt;
  const auto piece = layOut(**style, design, design.parameters, distance.piece, Blanks::OnGrid);
  return piece ? sizeOf(*piece, distance, nullptr) : std::nullopt;
}

std::optional<Gauge> gaugeOf(const Style& style, const Design& design, const Movable& thing,
                             Blanks blanks) {
  const auto piece = layOut(style, design, design.parameters, pieceOf(thing), blanks);
  if (!piece) return std::nullopt;
  std::optional<Found> before;
  if (const Handle* line = lineOf(thing)) {
    before = findIn(*piece, *line, nullptr);
    if (!before) return std::nullopt;
  }
  return [&style, design, thing, blanks, before](const Parameters& then) -> std::optional<double> {
    const auto now = layOut(style, design, then, pieceOf(thing), blanks);
    if (!now) return std::nullopt;
    if (const auto* size = std::get_if<BlankDistance>(&thing))
      return sizeOf(*now, *size, before ? &*before : nullptr);
    const auto found = findIn(*now, std::get<Handle>(thing), &*before);
    return found ? std::optional(dot(found->place.middle, before->place.normal)) : std::nullopt;
  };
}

}  // namespace creasewright
