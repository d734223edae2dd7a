#include "folding/cavity/cavity.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>

#include "folding/cavity/cavity_card.h"
#include "folding/cavity/cavity_growth.h"
#include "folding/cavity/cavity_parts.h"

namespace creasewright {
namespace {

constexpr int kMostSteps = 20000;  // far more than a box has; ends hostile input in time
constexpr int kStepsAmongSlants = 200;

/// Searches for the best box about a seed: wherever card is in the box, one of its sides must move
/// to before that card. Every such move is tried, the piece with the fewest ways out first; a
/// branch ends when its box cannot beat the best one found.
class BoxSearch {
 public:
  BoxSearch(std::vector<Piece3> pieces, const Coordinates& seed, const Coordinates& wanted,
            double half)
      : pieces_(std::move(pieces)), seed_(seed), wanted_(wanted), half_(half), best_{seed, seed} {}

  Box run(const Box& limits) {
    if (hasSlantedCard(pieces_)) {
      best_ = grownBox(pieces_, seed_, wanted_, limits, half_);
      found_ = best_.volume() > 0;
      // Slanting card leaves the search few ways out and many tries.
      stepsLeft_ = lack(best_) > kTouch || wanted_ == Coordinates{} ? kStepsAmongSlants : 0;
    }
    shrink(limits);
    for (int axis = 0; axis < 3 && found_; ++axis) widen(axis, limits);
    return best_;
  }

 private:
  /// mm that a box lacks of the wanted sizes, all axes together.
  [[nodiscard]] double lack(const Box& box) const {
    double sum = 0;
    for (int axis = 0; axis < 3; ++axis)
      sum += std::max(0.0, wanted_[axis] - (box.high[axis] - box.low[axis]));
    return sum;
  }

  [[nodiscard]] bool beatsBest(const Box& box) const {
    if (!found_) return true;
    const double less = lack(box) - lack(best_);
    if (std::abs(less) > kTouch) return less < 0;
    return box.volume() > best_.volume() * (1 + 1e-9);
  }

  /// The boxes within `box` that leave out `part` by moving one side, the largest first.
  [[nodiscard]] std::vector<Box> waysOut(const Box& box, const Piece3& part) const {
    std::vector<Box> ways;
    for (int axis = 0; axis < 3; ++axis) {
      const auto along = [axis](const Coordinates& a, const Coordinates& b) {
        return a[axis] < b[axis];
      };
      const auto [first, last] = std::minmax_element(part.begin(), part.end(), along);
      const double from = (*first)[axis] - half_;
      const double to = (*last)[axis] + half_;
      if (from >= seed_[axis]) ways.emplace_back(box).high[axis] = from;
      if (to <= seed_[axis]) ways.emplace_back(box).low[axis] = to;
    }
    std::ranges::stable_sort(ways, std::greater<>(), &Box::volume);
    return ways;
  }

  void shrink(const Box& box) {
    if (--stepsLeft_ < 0 || !beatsBest(box)) return;
    bool card = false;
    std::vector<Box> fewest;
    for (const Piece3& piece : pieces_) {
      const Piece3 part = within(piece, box, half_);
      if (part.empty()) continue;
      std::vector<Box> ways = waysOut(box, part);
      if (!card || ways.size() < fewest.size()) fewest = std::move(ways);
      card = true;
      if (fewest.size() < 2) break;
    }
    if (!card) {
      best_ = box;
      found_ = true;
    }
    for (const Box& way : fewest) shrink(way);
  }

  /// Moves both sides along an axis out to the nearest card: slanting card may leave room.
  void widen(int axis, const Box& limits) {
    Box prism = best_;
    prism.low[axis] = limits.low[axis];
    prism.high[axis] = limits.high[axis];
    for (const Piece3& piece : pieces_) {
      const Piece3 part = within(piece, prism, half_);
      for (const Coordinates& corner : part)
        if (corner[axis] - half_ >= best_.high[axis] - kTouch)
          prism.high[axis] = std::min(prism.high[axis], corner[axis] - half_);
        else
          prism.low[axis] = std::max(prism.low[axis], corner[axis] + half_);
    }
    best_.low[axis] = std::min(best_.low[axis], prism.low[axis]);
    best_.high[axis] = std::max(best_.high[axis], prism.high[axis]);
  }

  std::vector<Piece3> pieces_;
  Coordinates seed_;
  Coordinates wanted_;
  double half_;
  Box best_;
  bool found_ = false;
  int stepsLeft_ = kMostSteps;
};

}  // namespace

CavityBox cavityBox(const Net& net, const Pose& folded, const Cavity& cavity, double caliper,
                    const CavitySize& wanted) {
  const std::optional<int> panel = net.find(cavity.panel);
  if (!panel || folded.size() < net.panels.size()) return {cavity.seed, cavity.seed};
  Coordinates wantedAlong{};
  wantedAlong[cavity.axes[0]] = wanted.length;
  wantedAlong[cavity.axes[1]] = wanted.width;
  wantedAlong[cavity.axes[2]] = wanted.height;
  BoxSearch search(cardAround(net, folded, cavity, caliper), coordinates(cavity.seed), wantedAlong,
                   caliper / 2);
  const Box best = search.run({coordinates(cavity.low), coordinates(cavity.high)});
  return {point(best.low), point(best.high)};
}

CavitySize sizeAlong(const Cavity& cavity, const CavityBox& box) {
  const Coordinates size = coordinates(box.high - box.low);
  return {size[cavity.axes[0]], size[cavity.axes[1]], size[cavity.axes[2]]};
}

CavitySize measureCavity(const Net& net, const Pose& folded, const Cavity& cavity, double caliper,
                         const CavitySize& wanted) {
  return sizeAlong(cavity, cavityBox(net, folded, cavity, caliper, wanted));
}

}  // namespace creasewright
