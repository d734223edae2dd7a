#include <algorithm>
#include <set>

#include "core/laws/law_book.h"
#include "core/laws/meeting_edges.h"
#include "core/laws/own_piece.h"

namespace creasewright::testing {
namespace {

constexpr double kOpen = 5;   // mm of a seam that may stay open at its end
constexpr double kMeets = 1;  // mm that a declared pair must meet along
constexpr double kGlued = 6;  // mm across glued faces, at least

bool declares(const OpenEdges& open, const Meeting& m) {
  return (open.panel == m.panel && open.edge == m.edge && open.other == m.other &&
          open.otherEdge == m.otherEdge) ||
         (open.panel == m.other && open.edge == m.otherEdge && open.other == m.panel &&
          open.otherEdge == m.edge);
}

/// The panels that hang together behind a crease with `first`, which hangs on `from`: those hinged
/// on it, and those of which it is only a named part.
std::vector<int> hangingOn(const Net& net, int first, int from) {
  std::vector<int> group{first};
  for (std::size_t i = 0; i < group.size(); ++i)
    for (const Crease& crease : net.creases) {
      if (crease.loop || (crease.parent != group[i] && crease.child != group[i])) continue;
      const int next = crease.parent == group[i] ? crease.child : crease.parent;
      if (next == from || std::ranges::find(group, next) != group.end()) continue;
      if (crease.parent == group[i] || crease.kind == CreaseKind::Flat) group.push_back(next);
    }
  return group;
}

/// Whether the flap at the crease that the edge meets has a place in the box: it, or what hangs on
/// it, meets some other panel than the one it hangs on. Then that mate is what the other laws
/// judge.
bool flapHasAPlace(const Net& net, const Meeting& m) {
  const Crease* crease = net.creaseOf(m.across);
  if (crease == nullptr || crease->parent != m.other) return true;  // the flap's own side of it
  const std::vector<int> flap = hangingOn(net, m.across, m.other);
  const auto isPart = [&](int panel) { return std::ranges::find(flap, panel) != flap.end(); };
  return std::ranges::any_of(net.mates, [&](const Mate& mate) {
    return (isPart(mate.panel) && mate.onto != m.other) ||
           (isPart(mate.onto) && mate.panel != m.other);
  });
}

std::string nameOf(const Net& net, int panel, const std::string& edge) {
  return net.panels[static_cast<std::size_t>(panel)].id + '.' + edge;
}

struct Box {
  Point3 low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
};

Box boxOf(const BuiltPiece& piece, const Transform& place) {
  Box box;
  for (std::size_t i = 0; i < piece.folded.size(); ++i)
    for (const Point& corner : piece.net.panels[i].outline) {
      const Point3 p = place.apply(piece.folded[i].apply(corner));
      box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
      box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
    }
  return box;
}

/// A glued piece lies with its panel on the stated face of the other's, wholly over it, and stands
/// inside the other piece with a card's thickness to its walls.
Verdict lands(const BuiltPiece& piece, const BuiltPiece& other, double caliper) {
  const Holding& held = *piece.held;
  const auto panel = piece.net.find(held.panel);
  const auto onto = other.net.find(held.onto);
  if (!panel || !onto || !held.place) return piece.name + " is glued to nothing";
  const auto flap = static_cast<std::size_t>(*panel);
  const auto target = static_cast<std::size_t>(*onto);
  const Transform seen =
      other.folded[target].inverse().after(*held.place).after(piece.folded[flap]);
  Polygon outline;
  for (const Point& corner : piece.net.panels[flap].outline) {
    const Point3 p = seen.apply(corner);
    if (std::abs(p.z - (held.face == Face::Inside ? caliper : -caliper)) > 0.05)
      return piece.name + " is glued " + std::to_string(p.z) + " mm off its place";
    if (locate({p.x, p.y}, other.net.panels[target].outline) == Side::Outside)
      return piece.name + " reaches past what it is glued to";
    outline.push_back({p.x, p.y});
  }
  const Bounds size = bounds(outline);
  if (std::min(size.width(), size.height()) < kGlued) return piece.name + " has little glue";
  const Box in = boxOf(piece, *held.place);
  const Box out = boxOf(other, {});
  if (in.low.x < out.low.x + caliper || in.low.y < out.low.y + caliper ||
      in.high.x > out.high.x - caliper || in.high.y > out.high.y - caliper ||
      in.high.z > out.high.z + caliper)
    return piece.name + " does not stand inside " + other.name;
  return {};
}

}  // namespace

/// What an own piece hangs on, followed to the end, is the one piece that others are held to.
Verdict everyPieceIsHeldOrLoose(const BuiltDesign& built) {
  std::string first;
  for (const BuiltPiece& piece : built.pieces) {
    if (piece.role) continue;  // how an extra goes with the box is its Placing
    std::set<std::string> seen;
    const BuiltPiece* at = &piece;
    while (at->held) {
      if (!seen.insert(at->name).second) return piece.name + " is held in a ring";
      const BuiltPiece* other = ownPiece(built, at->held->to);
      if (other == nullptr) return at->name + " is held to a piece not there";
      if (at->held->by == Hold::Glue)
        if (Verdict wrong = lands(*at, *other, built.design.card.caliper.mm()); !wrong.empty())
          return wrong;
      at = other;
    }
    if (!first.empty() && first != at->name)
      return at->name + " is joined to nothing, as is " + first;
    first = at->name;
  }
  return {};
}

Verdict meetingEdgesAreHeldOrDeclaredOpen(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    for (const Meeting& m : meetingEdges(piece, piece.card.caliper.mm())) {
      if (m.open <= kOpen || (m.across >= 0 && flapHasAPlace(net, m))) continue;
      if (std::ranges::any_of(net.openEdges, [&](const OpenEdges& o) { return declares(o, m); }))
        continue;
      return piece.name + ": " + nameOf(net, m.panel, m.edge) + " and " +
             nameOf(net, m.other, m.otherEdge) + " meet over " + std::to_string(m.length) +
             " mm and stay open over " + std::to_string(m.open);
    }
  }
  return {};
}

Verdict declaredOpenEdgesMeet(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces) {
    const Net& net = piece.net;
    if (net.openEdges.empty()) continue;
    const std::vector<Meeting> meetings = meetingEdges(piece, piece.card.caliper.mm());
    for (const OpenEdges& open : net.openEdges) {
      const bool meets = std::ranges::any_of(
          meetings, [&](const Meeting& m) { return m.length >= kMeets && declares(open, m); });
      if (!meets)
        return piece.name + ": " + nameOf(net, open.panel, open.edge) + " and " +
               nameOf(net, open.other, open.otherEdge) + " are declared open and do not meet";
    }
  }
  return {};
}

}  // namespace creasewright::testing
