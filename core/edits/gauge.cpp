#include "edits/gauge.h"

#include <algorithm>
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

/// A piece that is laid flat.
struct OnBlank {
  const Net& net;
  const FlatNet& flat;
};

/// A piece of a style, laid flat.
struct Laid {
  Net net;
  FlatNet flat;
  std::map<int, Problem> broken;  ///< by index: changes by hand that are not made

  [[nodiscard]] OnBlank onBlank() const { return {net, flat}; }
};

std::optional<Found> edgeAt(OnBlank piece, std::size_t panel, std::size_t edge) {
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
std::optional<Found> edgeLike(OnBlank piece, std::size_t panel, const Found& like) {
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
std::optional<Found> findIn(OnBlank piece, const Handle& handle, const Found* like) {
  const std::optional<int> number = piece.net.find(handle.panel);
  if (!number || handle.edge < 0 || handle.edge >= handle.corners) return std::nullopt;
  const auto panel = static_cast<std::size_t>(*number);
  if (static_cast<int>(piece.flat.panels[panel].size()) == handle.corners)
    return edgeAt(piece, panel, static_cast<std::size_t>(handle.edge));
  return like == nullptr ? std::nullopt : edgeLike(piece, panel, *like);
}

using MakeEdits = decltype(&applyEdits);

/// A piece as these measures make it, with changes by hand; nothing beyond a limit.
std::optional<Laid> laidOut(const Style& style, const Design& design, const Parameters& wanted,
                            const std::vector<Edit>& edits, MakeEdits make, int index,
                            Blanks blanks) {
  const Workbench bench = benchOf(design);
  const Parameters parameters =
      design.ownStyle ? withRules(*design.ownStyle, style, wanted, bench, {}) : wanted;
  if (!checkLimits(style, parameters, bench).empty()) return std::nullopt;
  const bool asBuilt = blanks == Blanks::OnGrid;
  std::vector<Piece> pieces =
      style.build(asBuilt ? blanksOnGrid(style, parameters, bench) : parameters, bench);
  EditsMade made;
  if (!edits.empty()) made = make(edits, parameters, lengthKeys(style.parameters), bench, pieces);
  if (index < 0 || index >= static_cast<int>(pieces.size())) return std::nullopt;
  Laid laid{std::move(pieces[static_cast<std::size_t>(index)].net), {}, std::move(made.broken)};
  laid.flat = layOut(laid.net);
  return laid;
}

/// A piece as the design makes it.
std::optional<Laid> laidOut(const Style& style, const Design& design, int index, Blanks blanks) {
  return laidOut(style, design, design.parameters, allEdits(design), applyEdits, index, blanks);
}

std::optional<double> sizeOf(OnBlank piece, const BlankDistance& distance, const Found* like) {
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
  const auto piece = laidOut(**style, design, handle.piece, Blanks::OnGrid);
  const auto found = piece ? findIn(piece->onBlank(), handle, nullptr) : std::nullopt;
  return found ? std::optional(found->place) : std::nullopt;
}

std::optional<double> distanceOf(const Design& design, const BlankDistance& distance) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return std::nullopt;
  const auto piece = laidOut(**style, design, distance.piece, Blanks::OnGrid);
  return piece ? distanceOn(piece->net, piece->flat, distance) : std::nullopt;
}

std::optional<double> distanceOn(const Net& net, const FlatNet& flat,
                                 const BlankDistance& distance) {
  return sizeOf({net, flat}, distance, nullptr);
}

std::optional<Gauge> gaugeOf(const Style& style, const Design& design, const Movable& thing,
                             Blanks blanks) {
  const auto piece = laidOut(style, design, pieceOf(thing), blanks);
  if (!piece) return std::nullopt;
  std::optional<Found> before;
  if (const Handle* line = lineOf(thing)) {
    before = findIn(piece->onBlank(), *line, nullptr);
    if (!before) return std::nullopt;
  }
  // What holds here holds close by: nobody asks again.
  std::vector<Edit> edits = allEdits(design);
  for (const auto& [index, problem] : piece->broken)
    edits[static_cast<std::size_t>(index)].on = false;
  return [&style, design, thing, blanks, before,
          edits = std::move(edits)](const Parameters& then) -> std::optional<double> {
    const auto now = laidOut(style, design, then, edits, makeEdits, pieceOf(thing), blanks);
    if (!now) return std::nullopt;
    if (const auto* size = std::get_if<BlankDistance>(&thing))
      return sizeOf(now->onBlank(), *size, before ? &*before : nullptr);
    const auto found = findIn(now->onBlank(), std::get<Handle>(thing), &*before);
    return found ? std::optional(dot(found->place.middle, before->place.normal)) : std::nullopt;
  };
}

}  // namespace creasewright
