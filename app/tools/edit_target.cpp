#include "tools/edit_target.h"

#include <algorithm>
#include <cmath>

#include "edits/kinds/crease_site.h"
#include "edits/kinds/edge_site.h"
#include "scene/net_picture.h"
#include "units/length_text.h"

namespace creasewright {

namespace {

constexpr double kNearMiddle = 0.14;  // of the panel
constexpr double kNearSide = 0.28;

/// The stretch of a panel's edge called `edge`, in blank coordinates.
std::optional<Segment> edgeLineOf(const BuiltPiece& piece, int panel, const std::string& edge) {
  const auto site = findEdge(piece.net, panel, edge);
  if (!site) return std::nullopt;
  return Segment{piece.flat.place(panel, site->a), piece.flat.place(panel, site->b)};
}

std::optional<EditTarget> nearestEdgeOn(const BuiltPiece& piece, EditPlace place, int panel,
                                        Point at, double& reach) {
  std::optional<EditTarget> found;
  for (std::string& edge : edgesFor(place, piece.net, panel)) {
    const auto line = edgeLineOf(piece, panel, edge);
    const double away = line ? distanceToSegment(at, *line) : reach;
    if (away >= reach) continue;
    reach = away;
    found = EditTarget{panel, std::move(edge), line};
  }
  return found;
}

bool hasMeasure(const EditKind& kind, std::string_view key) {
  return std::ranges::find(kind.measures, key, &EditMeasure::key) != kind.measures.end();
}

/// A length as it is typed, on the grid (1 mm where there is none).
std::string onGrid(double mm, ToolGrid grid) {
  const std::int64_t step = grid.isNone() ? Length::mm(1).nm() : grid.step().nm();
  const std::int64_t steps = std::llround(mm * 1e6 / static_cast<double>(step));
  return exactText(Length::nanometres(steps * step));
}

/// How large a kind is at first along a side that is `side` mm, and the formula for it where it has
/// to be smaller off the middle.
double halfSize(const EditKind& kind, double side) {
  if (kind.id == "holes") return 2.5;
  if (kind.id == "mark") return 3;
  return side / 8;
}

struct PlaceKeys {
  std::string_view from;
  std::string_view at;
  std::string_view size;
  std::string_view panelSize;
  std::string_view low;
  std::string_view high;
};

void placeAlong(const EditKind& kind, Edit& edit, const PlaceKeys& axis, double at, double side,
                ToolGrid grid) {
  const double share = at / side;
  if (std::abs(share - 0.5) < kNearMiddle) return;
  if (hasMeasure(kind, axis.size) && kind.id != "text")
    edit.measures[std::string(axis.size)] = std::string(axis.panelSize) + " / 4";
  const bool nearSide = share < kNearSide || share > 1 - kNearSide;
  if (!nearSide) {
    edit.measures[std::string(axis.at)] = onGrid(at - side / 2, grid);
    return;
  }
  const bool low = share < 0.5;
  const double room = low ? at : side - at;
  edit.measures[std::string(axis.from)] = low ? axis.low : axis.high;
  edit.measures[std::string(axis.at)] = onGrid(std::max(2.0, room - halfSize(kind, side)), grid);
}

void placeOnEdge(const EditKind& kind, const EditTarget& target, Edit& edit, Point at,
                 ToolGrid grid) {
  // Left to right as the net is drawn, an upright one from its lower end.
  Segment line = *target.line;
  const Point way = line.b - line.a;
  if (way.x < -1e-6 || (std::abs(way.x) <= 1e-6 && way.y < 0)) std::swap(line.a, line.b);
  const double whole = length(line);
  const double along = dot(at - line.a, unit(line.b - line.a));
  const double share = along / whole;
  if (hasMeasure(kind, "ends")) {
    if (share < kNearSide) edit.measures["ends"] = "Left";
    if (share > 1 - kNearSide) edit.measures["ends"] = "Right";
  } else if (hasMeasure(kind, "x") && std::abs(share - 0.5) >= kNearMiddle) {
    edit.measures["x"] = onGrid(along - whole / 2, grid);
    edit.measures["width"] = "edge-length / 5";
  }
}

Edit edgeEdit(const EditKind& kind, const BuiltPiece& piece, const EditTarget& target) {
  return {
      std::string(kind.id), piece.name, piece.net.panels[static_cast<std::size_t>(target.panel)].id,
      target.edge,          {},         true};
}

}  // namespace

std::optional<EditTarget> editTargetAt(const BuiltPiece& piece, EditPlace place, Point at,
                                       double reach) {
  const int under = panelAt(piece, at);
  if (place == EditPlace::Panel)
    return under < 0 ? std::nullopt : std::optional(EditTarget{under, {}, {}});
  std::optional<EditTarget> found;
  for (int i = 0; i < static_cast<int>(piece.net.panels.size()); ++i)
    if (auto nearer = nearestEdgeOn(piece, place, i, at, reach)) found = std::move(nearer);
  double any = 1e9;
  return found || under < 0 ? found : nearestEdgeOn(piece, place, under, at, any);
}

Edit editAt(const EditKind& kind, const BuiltPiece& piece, const EditTarget& target, Point at,
            ToolGrid grid) {
  Edit edit = edgeEdit(kind, piece, target);
  const Bounds box = bounds(piece.flat.panels[static_cast<std::size_t>(target.panel)]);
  const Point there = at - box.low;
  // What holds on most edges and folds, and can be seen.
  if (kind.id == "edge") edit.measures["shape"] = "Wave";
  if (kind.id == "fold") edit.measures["line"] = "Perforation";
  if (target.line) {
    placeOnEdge(kind, target, edit, at, grid);
  } else if (hasMeasure(kind, "x-from")) {
    placeAlong(kind, edit, {"x-from", "x", "width", "panel-width", "Left", "Right"}, there.x,
               box.width(), grid);
    placeAlong(kind, edit, {"y-from", "y", "height", "panel-height", "Bottom", "Top"}, there.y,
               box.height(), grid);
  }
  return edit;
}

Edit splitBetween(const EditKind& kind, const BuiltPiece& piece, const EditTarget& target,
                  Point from, Point to, ToolGrid grid) {
  Edit edit = edgeEdit(kind, piece, target);
  const Bounds box = bounds(piece.flat.panels[static_cast<std::size_t>(target.panel)]);
  const Point way = to - from;
  const bool up = std::abs(way.y) > std::abs(way.x);
  if (up) edit.measures["direction"] = "Up";
  // Where the line meets the two sides of the panel's box: an upright one begins at the top.
  const auto meets = [&](double side) {
    if (norm(way) < 1e-9) return up ? from.x : from.y;
    return up ? from.x + way.x * (side - from.y) / way.y : from.y + way.y * (side - from.x) / way.x;
  };
  const double low = up ? box.low.x : box.low.y;
  const double size = up ? box.width() : box.height();
  const double start = meets(up ? box.high.y : box.low.x);
  const double end = meets(up ? box.low.y : box.high.x);
  const std::string slant = onGrid(end - start, grid);
  const double share = (start - low) / size;
  if (slant != "0 mm") edit.measures["slant"] = slant;
  if (slant == "0 mm" && std::abs(share - 0.5) < kNearMiddle) return edit;
  const bool nearLow = share < 0.5;
  edit.measures["from"] = nearLow ? "Left or bottom" : "Right or top";
  edit.measures["at"] = onGrid(nearLow ? start - low : low + size - start, grid);
  return edit;
}

}  // namespace creasewright
