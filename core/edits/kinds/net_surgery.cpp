#include "edits/kinds/net_surgery.h"

#include <algorithm>
#include <iterator>
#include <optional>
#include <set>

namespace creasewright {
namespace {

template <class Item>
void renumber(std::vector<Item>& items, const PanelNumbers& to, int Item::*first,
              int Item::*second = nullptr) {
  const auto number = [&to](int panel) { return to[static_cast<std::size_t>(panel)]; };
  std::erase_if(items, [&](const Item& item) {
    return number(item.*first) < 0 || (second != nullptr && number(item.*second) < 0);
  });
  for (Item& item : items) {
    item.*first = number(item.*first);
    if (second != nullptr) item.*second = number(item.*second);
  }
}

std::set<int> stagesOf(const Net& net) {
  std::set<int> stages;
  for (const Crease& crease : net.creases) {
    if (crease.kind != CreaseKind::Flat) stages.insert(crease.stage);
    for (const Waypoint& point : crease.way) stages.insert(static_cast<int>(point.after));
  }
  return stages;
}

/// Everything after stage `from` moves by one, forwards or back.
void shiftStages(Net& net, int from, int by) {
  for (Crease& crease : net.creases) {
    if (crease.stage > from) crease.stage += by;
    for (Waypoint& point : crease.way)
      if (point.after > from) point.after += by;
  }
  for (Bend& bend : net.bends)
    if (bend.stage > from) bend.stage += by;
  for (Mate& mate : net.mates)
    if (mate.stage > from) mate.stage += by;
}

/// Whether a run of points lies on the positive side; nothing where it is torn apart.
std::optional<bool> isBeyond(const Polyline& points, const std::function<double(Point)>& side) {
  constexpr double kOn = 1e-6;  // mm
  double low = 0;
  double high = 0;
  for (const Point& point : points) {
    low = std::min(low, side(point));
    high = std::max(high, side(point));
  }
  if (low < -kOn && high > kOn) return std::nullopt;
  return high > kOn;
}

/// Moves what lies on the positive side; `whole` becomes false where something is torn apart.
struct Mover {
  const Transform& frame;
  const std::function<double(Point)>& side;
  bool whole = true;

  bool take(Polyline& points) {
    const std::optional<bool> all = isBeyond(points, side);
    whole = whole && all;
    if (!all.value_or(false)) return false;
    points = placedBy(frame, points);
    return true;
  }
  bool take(Point& point) {
    Polyline one{point};
    const bool taken = take(one);
    point = one.front();
    return taken;
  }
  bool take(Segment& line) {
    Polyline ends{line.a, line.b};
    const bool taken = take(ends);
    line = {ends[0], ends[1]};
    return taken;
  }
};

}  // namespace

void renumberPanels(Net& net, const PanelNumbers& to) {
  std::vector<Panel> panels(net.panels.size());
  std::size_t kept = 0;
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    if (to[i] < 0) continue;
    if (static_cast<std::size_t>(to[i]) >= panels.size())
      panels.resize(static_cast<std::size_t>(to[i]) + 1);
    panels[static_cast<std::size_t>(to[i])] = std::move(net.panels[i]);
    kept = std::max(kept, static_cast<std::size_t>(to[i]) + 1);
  }
  panels.resize(kept);
  net.panels = std::move(panels);
  renumber(net.creases, to, &Crease::parent, &Crease::child);
  renumber(net.mates, to, &Mate::panel, &Mate::onto);
  renumber(net.openEdges, to, &OpenEdges::panel, &OpenEdges::other);
  renumber(net.slits, to, &Slit::panel);
  renumber(net.inscriptions, to, &Inscription::panel);
  renumber(net.marks, to, &GuideMark::panel);
}

void dropEmptyStages(Net& net, const Net& before) {
  const std::set<int> then = stagesOf(before);
  const std::set<int> now = stagesOf(net);
  for (int stage = net.stageCount(); stage > 0; --stage) {
    if (now.contains(stage) || !then.contains(stage)) continue;
    net.stages.erase(net.stages.begin() + (stage - 1));
    std::erase_if(net.bends, [stage](const Bend& bend) { return bend.stage == stage; });
    for (Mate& mate : net.mates)
      if (mate.stage == stage) mate.stage = 0;
    shiftStages(net, stage, -1);
  }
}

int stageAtStart(Net& net, std::string_view code) {
  if (!net.stages.empty() && net.stages.front() == code) return 1;
  shiftStages(net, 0, 1);
  // What says where a fold stands before the first stage is still said of the start.
  net.stages.emplace(net.stages.begin(), code);
  return 1;
}

int stageAtEnd(Net& net, std::string_view code) {
  if (net.stages.empty() || net.stages.back() != code) net.stages.emplace_back(code);
  return net.stageCount();
}

std::string freePanelId(const Net& net, const std::string& wanted) {
  std::string id = wanted;
  for (int i = 2; net.find(id); ++i) id = wanted + "-" + std::to_string(i);
  return id;
}

std::vector<int> withAllBeyond(const Net& net, int panel) {
  std::vector<int> all{panel};
  for (std::size_t i = 0; i < all.size(); ++i)
    for (const Crease& crease : net.creases)
      if (!crease.loop && crease.parent == all[i]) all.push_back(crease.child);
  return all;
}

bool isNeeded(const Piece& piece, const std::vector<Piece>& all, const std::string& panel) {
  if (piece.cavity && piece.cavity->panel == panel) return true;
  if (piece.held && piece.held->panel == panel) return true;
  return std::ranges::any_of(all, [&](const Piece& other) {
    return other.held && other.held->to == piece.name && other.held->onto == panel;
  });
}

Polyline placedBy(const Transform& frame, const Polyline& points) {
  Polyline placed;
  for (const Point& point : points) {
    const Point3 p = frame.apply(point);
    placed.push_back({p.x, p.y});
  }
  return placed;
}

Segment placedBy(const Transform& frame, const Segment& line) {
  const Polyline ends = placedBy(frame, Polyline{line.a, line.b});
  return {ends[0], ends[1]};
}

bool moveContents(Net& net, int from, int to, const Transform& frame,
                  const std::function<double(Point)>& side) {
  Mover mover{frame, side};
  Panel& old = net.panels[static_cast<std::size_t>(from)];
  Panel& fresh = net.panels[static_cast<std::size_t>(to)];
  std::vector<Polygon> stay;
  for (Polygon& opening : old.openings)
    (mover.take(opening) ? fresh.openings : stay).push_back(std::move(opening));
  old.openings = std::move(stay);
  for (Slit& slit : net.slits)
    if (slit.panel == from && mover.take(slit.line)) slit.panel = to;
  for (GuideMark& mark : net.marks)
    if (mark.panel == from && mover.take(mark.line)) mark.panel = to;
  for (Inscription& line : net.inscriptions)
    if (line.panel == from && mover.take(line.at)) line.panel = to;
  for (Crease& crease : net.creases)
    if (crease.parent == from && crease.child != to && mover.take(crease.onParent))
      crease.parent = to;
  return mover.whole;
}

}  // namespace creasewright
