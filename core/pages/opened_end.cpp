#include "pages/opened_end.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "folding/loop_closure.h"

namespace creasewright {
namespace {

/// A bent flap: panels joined by loops, each on a crease of its own.
struct BentFlap {
  std::vector<int> panels;
  std::vector<std::size_t> hinges;  ///< creases that they hang on
  Point3 middle;
};

/// By panel, the first one that loops join it to.
std::vector<int> joinedByLoops(const Net& net) {
  std::vector<int> first(net.panels.size());
  std::iota(first.begin(), first.end(), 0);
  for (bool changed = true; std::exchange(changed, false);)
    for (const Crease& crease : net.creases) {
      if (!crease.loop) continue;
      int& a = first[static_cast<std::size_t>(crease.parent)];
      int& b = first[static_cast<std::size_t>(crease.child)];
      if (a == b) continue;
      a = b = std::min(a, b);
      changed = true;
    }
  return first;
}

/// Where straightened panels no longer meet along their loops; mm.
double widestGap(const Net& net, const Pose& pose, const BentFlap& flap) {
  double widest = 0;
  for (const Crease& crease : net.creases) {
    if (!crease.loop || std::ranges::find(flap.panels, crease.parent) == flap.panels.end())
      continue;
    const auto parent = static_cast<std::size_t>(crease.parent);
    const auto child = static_cast<std::size_t>(crease.child);
    for (const Point& end : {crease.onParent.a, crease.onParent.b}) {
      double nearest = 1e9;
      for (const Point& corner : net.panels[child].outline)
        nearest = std::min(nearest, distance(pose[parent].apply(end), pose[child].apply(corner)));
      widest = std::max(widest, nearest);
    }
  }
  return widest;
}

Point3 middleOf(const BuiltPiece& piece, const std::vector<int>& panels) {
  Point3 sum;
  for (const int panel : panels) {
    const auto i = static_cast<std::size_t>(panel);
    sum = sum + piece.folded[i].apply(centroid(piece.net.panels[i].outline));
  }
  return sum * (1.0 / static_cast<double>(panels.size()));
}

/// Nothing for panels that carry others, are glued, or would not meet once they are straight.
std::optional<BentFlap> bentFlap(const BuiltPiece& piece, std::vector<int> panels) {
  constexpr double kMeet = 0.1;  // mm
  const Net& net = piece.net;
  BentFlap flap{std::move(panels), {}, {}};
  const auto holds = [&](int panel) {
    return std::ranges::find(flap.panels, panel) != flap.panels.end();
  };
  std::vector<Angle> angles = foldAngles(net, 1);
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    if (crease.loop) continue;
    if (holds(crease.parent)) return std::nullopt;
    if (!holds(crease.child)) continue;
    flap.hinges.push_back(i);
    angles[i] = Angle();
  }
  if (flap.hinges.size() != flap.panels.size() ||
      std::ranges::any_of(flap.panels, [&](int panel) { return isGlued(net, panel); }) ||
      widestGap(net, pose(net, angles), flap) > kMeet)
    return std::nullopt;
  flap.middle = middleOf(piece, flap.panels);
  return flap;
}

std::vector<BentFlap> bentFlaps(const BuiltPiece& piece) {
  const std::vector<int> first = joinedByLoops(piece.net);
  std::vector<BentFlap> flaps;
  for (int root = 0; root < static_cast<int>(first.size()); ++root) {
    std::vector<int> panels;
    for (int i = 0; i < static_cast<int>(first.size()); ++i)
      if (first[static_cast<std::size_t>(i)] == root) panels.push_back(i);
    if (panels.size() < 2) continue;
    if (auto flap = bentFlap(piece, std::move(panels))) flaps.push_back(std::move(*flap));
  }
  return flaps;
}

/// Whether a flap lies inside another one, which then goes first.
bool liesInside(const Net& net, const BentFlap& flap, const BentFlap& other) {
  return std::ranges::any_of(
      net.mates,
      [&](const Mate& mate) {
        return mate.face == Face::Inside &&
               std::ranges::find(flap.panels, mate.panel) != flap.panels.end() &&
               std::ranges::find(other.panels, mate.onto) != other.panels.end();
      });
}

/// Those of one end, in the order in which they come out.
std::vector<BentFlap> flapsInFront(const BuiltPiece& piece, Point3 front) {
  std::vector<BentFlap> flaps = bentFlaps(piece);
  if (flaps.empty()) return flaps;
  const BentFlap first = *std::ranges::max_element(
      flaps, {}, [&](const BentFlap& flap) { return dot(flap.middle, front); });
  double farthest = 0;
  for (const BentFlap& flap : flaps)
    farthest = std::max(farthest, distance(flap.middle, first.middle));
  std::erase_if(
      flaps,
      [&](const BentFlap& flap) { return distance(flap.middle, first.middle) > farthest / 2; });
  std::ranges::stable_sort(
      flaps, [&](const BentFlap& a, const BentFlap& b) { return liesInside(piece.net, b, a); });
  return flaps;
}

}  // namespace

bool isGlued(const Net& net, int panel) {
  return std::ranges::any_of(
      net.mates,
      [panel](const Mate& mate) {
        return mate.method == Method::Glue && (mate.panel == panel || mate.onto == panel);
      });
}

bool hasBentEnds(const BuiltPiece& piece) { return !bentFlaps(piece).empty(); }

std::vector<Angle> endOutAngles(const BuiltPiece& piece, double share, Point3 front) {
  const std::vector<BentFlap> flaps = flapsInFront(piece, front);
  std::vector<Angle> angles = foldAngles(piece.net, 1);
  const auto count = static_cast<double>(flaps.size());
  for (std::size_t k = 0; k < flaps.size(); ++k) {
    const double out = std::clamp(share * count - static_cast<double>(k), 0.0, 1.0);
    for (const std::size_t hinge : flaps[k].hinges)
      angles[hinge] = Angle::degrees(angles[hinge].degrees() * (1 - out));
  }
  return angles;
}

Pose withEndOut(const BuiltPiece& piece, double share, Point3 front) {
  return pose(piece.net, endOutAngles(piece, share, front));
}

}  // namespace creasewright
