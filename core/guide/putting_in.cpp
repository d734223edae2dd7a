#include "guide/putting_in.h"

#include <algorithm>
#include <array>

#include "document/halves.h"
#include "folding/loop_closure.h"

namespace creasewright {
namespace {

constexpr double kFar = 1e4;       // mm
constexpr double kTouching = 1;    // mm2 of a panel in the way that does not count
constexpr int kWallsThatHold = 4;  // of the six sides

using Coordinates = std::array<double, 3>;

Coordinates coordinates(const Point3& p) { return {p.x, p.y, p.z}; }

struct Block {
  Coordinates low;
  Coordinates high;
};

/// Some of the space less than there is: what only touches its sides is not in the way.
Block coreOf(const CavityBox& box) {
  Block block{coordinates(box.low), coordinates(box.high)};
  for (std::size_t i = 0; i < 3; ++i) {
    const double size = block.high.at(i) - block.low.at(i);
    const double less = std::min(0.6 + 0.1 * size, 0.35 * size);
    block.low.at(i) += less;
    block.high.at(i) -= less;
  }
  return block;
}

using Ring = std::vector<Coordinates>;

/// The part of a ring on one side of a plane across an axis.
Ring clipped(const Ring& ring, std::size_t axis, double at, bool above) {
  const auto inside = [&](const Coordinates& p) {
    return above ? p.at(axis) >= at : p.at(axis) <= at;
  };
  Ring kept;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Coordinates& a = ring[i];
    const Coordinates& b = ring[(i + 1) % ring.size()];
    if (inside(a)) kept.push_back(a);
    if (inside(a) == inside(b)) continue;
    const double share = (at - a.at(axis)) / (b.at(axis) - a.at(axis));
    Coordinates cut{};
    for (std::size_t k = 0; k < 3; ++k) cut.at(k) = a.at(k) + share * (b.at(k) - a.at(k));
    kept.push_back(cut);
  }
  return kept;
}

double areaOf(const Ring& ring) {
  Coordinates sum{};
  for (std::size_t i = 1; i + 1 < ring.size(); ++i) {
    Coordinates u{};
    Coordinates v{};
    for (std::size_t k = 0; k < 3; ++k) {
      u.at(k) = ring[i].at(k) - ring[0].at(k);
      v.at(k) = ring[i + 1].at(k) - ring[0].at(k);
    }
    sum.at(0) += (u.at(1) * v.at(2) - u.at(2) * v.at(1)) / 2;
    sum.at(1) += (u.at(2) * v.at(0) - u.at(0) * v.at(2)) / 2;
    sum.at(2) += (u.at(0) * v.at(1) - u.at(1) * v.at(0)) / 2;
  }
  return std::sqrt(sum[0] * sum[0] + sum[1] * sum[1] + sum[2] * sum[2]);
}

bool meets(Ring ring, const Block& block) {
  for (std::size_t axis = 0; axis < 3 && ring.size() > 2; ++axis) {
    ring = clipped(ring, axis, block.low.at(axis), true);
    ring = clipped(ring, axis, block.high.at(axis), false);
  }
  return ring.size() > 2 && areaOf(ring) > kTouching;
}

/// The panels in the frame of the space, but for those it reaches through.
std::vector<Ring> ringsOf(const BuiltPiece& built, const Pose& pose, const Transform& frame) {
  const Transform into = frame.inverse();
  const std::vector<std::string>& through = built.cavity->through;
  std::vector<Ring> rings;
  for (std::size_t i = 0; i < built.net.panels.size(); ++i) {
    const Panel& panel = built.net.panels[i];
    if (std::ranges::find(through, panel.id) != through.end()) continue;
    Ring ring;
    for (const Point& p : panel.outline) ring.push_back(coordinates(into.apply(pose[i].apply(p))));
    rings.push_back(std::move(ring));
  }
  return rings;
}

/// Which of the six ways out are free: the low and the high end of each axis.
std::array<std::array<bool, 2>, 3> waysOut(const std::vector<Ring>& rings, const Block& core) {
  std::array<std::array<bool, 2>, 3> free{};
  for (std::size_t axis = 0; axis < 3; ++axis)
    for (std::size_t end = 0; end < 2; ++end) {
      Block swept = core;
      (end == 0 ? swept.low : swept.high).at(axis) = end == 0 ? -kFar : kFar;
      free.at(axis).at(end) =
          std::ranges::none_of(rings, [&](const Ring& ring) { return meets(ring, swept); });
    }
  return free;
}

/// From outside along a free way: of several the one upwards or forwards, out of the frame's plane
/// first.
void setWay(const std::array<std::array<bool, 2>, 3>& free, const Block& core,
            const Transform& frame, PuttingIn& putting) {
  Coordinates middle{};
  for (std::size_t i = 0; i < 3; ++i) middle.at(i) = (core.low.at(i) + core.high.at(i)) / 2;
  Coordinates start = middle;
  for (const std::size_t axis : {2U, 1U, 0U})
    for (const std::size_t end : {1U, 0U}) {
      if (!free.at(axis).at(end) || start != middle) continue;
      const double size = core.high.at(axis) - core.low.at(axis);
      start.at(axis) += (end == 0 ? -1 : 1) * std::max(1.2 * size, size / 2 + 25);
    }
  putting.from = frame.apply(Point3{start[0], start[1], start[2]});
  putting.to = frame.apply(Point3{middle[0], middle[1], middle[2]});
}

/// A piece with a space of its own.
bool hasSpace(const BuiltPiece& built) {
  if (!built.cavity || !built.cavitySize || built.over) return false;
  return built.net.find(built.cavity->panel) && built.cavityBox.high.x > built.cavityBox.low.x;
}

}  // namespace

std::optional<PuttingIn> puttingIn(const BuiltPiece& built) {
  if (!hasSpace(built)) return {};
  const Net& net = built.net;
  const std::optional<int> panel = net.find(built.cavity->panel);
  const Block core = coreOf(built.cavityBox);
  FoldPath path(net);
  for (int after = net.stageCount(); after >= 0; --after) {
    const double progress =
        net.stageCount() == 0 ? 1 : static_cast<double>(after) / net.stageCount();
    const Result<Pose> found = path.pose(progress);
    const Pose placed = found ? *found : pose(net, progress);
    const Transform& frame = placed[static_cast<std::size_t>(*panel)];
    const auto free = waysOut(ringsOf(built, placed, frame), core);
    int walls = 0;
    PuttingIn putting{after, true, false, {}, {}};
    for (const auto& ends : free) {
      walls += (ends[0] ? 0 : 1) + (ends[1] ? 0 : 1);
      putting.through = putting.through || (ends[0] && ends[1]);
    }
    if (walls == 6) continue;
    putting.holds = walls >= kWallsThatHold;
    putting.through = putting.through && putting.holds;
    setWay(free, core, frame, putting);
    return putting;
  }
  return PuttingIn{0, false, false, {}, {}};
}

bool roomStaysFree(const BuiltPiece& piece, const Pose& pose) {
  if (!hasSpace(piece)) return true;
  const auto panel = static_cast<std::size_t>(*piece.net.find(piece.cavity->panel));
  const Block core = coreOf(piece.cavityBox);
  return std::ranges::none_of(ringsOf(piece, pose, pose[panel]),
                              [&](const Ring& ring) { return meets(ring, core); });
}

std::optional<int> productPiece(const BuiltDesign& built) {
  std::optional<int> holder;
  double smallest = 0;
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const BuiltPiece& piece = built.pieces[i];
    if (piece.role || !hasSpace(piece)) continue;
    const CavitySize& size = *piece.cavitySize;
    const double room = size.length * size.width * size.height;
    if (holder && room >= smallest) continue;
    smallest = room;
    holder = static_cast<int>(i);
  }
  return holder;
}

std::optional<ProductHolder> productHolder(const BuiltDesign& built) {
  const std::optional<int> piece = productPiece(built);
  if (!piece) return std::nullopt;
  const auto putting = puttingIn(asWhole(built, built.pieces[static_cast<std::size_t>(*piece)]));
  if (!putting) return std::nullopt;
  return ProductHolder{*piece, *putting};
}

}  // namespace creasewright
