#include "folding/loop_solver.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

#include "folding/index.h"

namespace creasewright {
namespace {

constexpr int kMostSteps = 80;
constexpr double kExact = 1e-18;      // mm2, sum of squares: closed beyond what doubles tell apart
constexpr double kLargestTurn = 0.3;  // rad in one step, so that no solution is leapt over

/// Whether `panel` hangs on tree crease `crease`.
bool hangsOn(const Net& net, int panel, int crease) {
  const Crease* up = net.creaseOf(panel);
  while (up != nullptr) {
    if (up == &net.creases[at(crease)]) return true;
    up = net.creaseOf(up->parent);
  }
  return false;
}

}  // namespace

/// (J^T J) x = -J^T r, rows of the matrix one after the other.
struct LoopSolver::System {
  std::vector<double> matrix;
  std::vector<double> right;

  /// Solves with `damping` added to the diagonal (Cholesky).
  [[nodiscard]] std::vector<double> solve(double damping) const {
    const std::size_t n = right.size();
    std::vector<double> l = matrix;
    std::vector<double> x = right;
    for (std::size_t i = 0; i < n; ++i) l[i * n + i] += damping;
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        double sum = l[i * n + j];
        for (std::size_t k = 0; k < j; ++k) sum -= l[i * n + k] * l[j * n + k];
        l[i * n + j] = i == j ? std::sqrt(std::max(sum, 1e-300)) : sum / l[j * n + j];
      }
    }
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t k = 0; k < i; ++k) x[i] -= l[i * n + k] * x[k];
      x[i] /= l[i * n + i];
    }
    for (std::size_t i = n; i-- > 0;) {
      for (std::size_t k = i + 1; k < n; ++k) x[i] -= l[k * n + i] * x[k];
      x[i] /= l[i * n + i];
    }
    return x;
  }
};

LoopSolver::LoopSolver(const Net& net) : net_(net), posing_(net) {
  const int count = static_cast<int>(net.creases.size());
  if (std::ranges::none_of(net.creases, &Crease::loop)) return;
  for (int i = 0; i < count; ++i)
    if (!net.creases[at(i)].loop && !net.creases[at(i)].driven) unknowns_.push_back(i);
  const Pose flat = pose(std::vector<Angle>(net.creases.size()));
  for (int i = 0; i < count; ++i) {
    const Crease& crease = net.creases[at(i)];
    if (!crease.loop) continue;
    Loop loop{i, crease.parent, crease.child, {}, {}, {}};
    const Transform toChild = flat[at(crease.child)].inverse().after(flat[at(crease.parent)]);
    const std::array<Point, 2> ends{crease.onParent.a, crease.onParent.b};
    for (std::size_t k = 0; k < 2; ++k) {
      loop.onParent.at(k) = {ends.at(k).x, ends.at(k).y, 0};
      loop.onChild.at(k) = toChild.apply(ends.at(k));
    }
    for (const int unknown : unknowns_)
      loop.turns.push_back((hangsOn(net, crease.parent, unknown) ? 1.0 : 0.0) -
                           (hangsOn(net, crease.child, unknown) ? 1.0 : 0.0));
    loops_.push_back(std::move(loop));
  }
}

double LoopSolver::squaredGap(const Pose& placed) const {
  double sum = 0;
  for (const Loop& loop : loops_) {
    for (std::size_t k = 0; k < 2; ++k) {
      const Point3 d = placed[at(loop.parent)].apply(loop.onParent.at(k)) -
                       placed[at(loop.child)].apply(loop.onChild.at(k));
      sum += dot(d, d);
    }
  }
  return sum;
}

LoopSolver::System LoopSolver::linearise(const Pose& placed) const {
  const std::size_t n = unknowns_.size();
  System system{std::vector<double>(n * n), std::vector<double>(n)};
  std::vector<Point3> column(n);
  for (const Loop& loop : loops_) {
    for (std::size_t k = 0; k < 2; ++k) {
      const Point3 p = placed[at(loop.parent)].apply(loop.onParent.at(k));
      const Point3 q = placed[at(loop.child)].apply(loop.onChild.at(k));
      for (std::size_t u = 0; u < n; ++u) {
        column[u] = {};
        if (loop.turns[u] == 0) continue;
        const Transform& hinge = placed[at(net_.creases[at(unknowns_[u])].child)];
        const Point3 moved = loop.turns[u] > 0 ? p : q;
        const Point3 arm = moved - hinge.apply(Point{0, 0});
        column[u] = cross(hinge.turn({1, 0, 0}), arm) * loop.turns[u];
      }
      for (std::size_t u = 0; u < n; ++u) {
        system.right[u] -= dot(column[u], p - q);
        for (std::size_t v = 0; v < n; ++v) system.matrix[u * n + v] += dot(column[u], column[v]);
      }
    }
  }
  return system;
}

double LoopSolver::close(std::vector<Angle>& angles) const {
  Pose placed = pose(angles);
  double open = squaredGap(placed);
  double damping = 1e-4;
  bool stuck = unknowns_.empty();
  for (int step = 0; step < kMostSteps && open > kExact && !stuck; ++step) {
    const System system = linearise(placed);
    double scale = 0;
    for (std::size_t i = 0; i < unknowns_.size(); ++i)
      scale = std::max(scale, system.matrix[i * unknowns_.size() + i]);
    stuck = true;
    for (; stuck && damping < 1e6; damping *= stuck ? 8 : 1) {
      const std::vector<double> turn = system.solve(damping * std::max(scale, 1e-12));
      double largest = 0;
      for (const double t : turn) largest = std::max(largest, std::abs(t));
      const double shorten = largest > kLargestTurn ? kLargestTurn / largest : 1;
      std::vector<Angle> tried = angles;
      for (std::size_t i = 0; i < turn.size(); ++i)
        tried[at(unknowns_[i])] =
            Angle::radians(angles[at(unknowns_[i])].radians() + turn[i] * shorten);
      Pose moved = pose(tried);
      const double left = squaredGap(moved);
      if (!(left < open)) continue;
      stuck = open - left < open * 1e-12;
      angles = std::move(tried);
      placed = std::move(moved);
      open = left;
      damping = std::max(damping / 10, 1e-14);
      break;
    }
  }
  return gap(placed);
}

int LoopSolver::widestLoop(const Pose& placed) const {
  int widest = -1;
  double most = -1;
  for (const Loop& loop : loops_) {
    for (std::size_t k = 0; k < 2; ++k) {
      const double open = distance(placed[at(loop.parent)].apply(loop.onParent.at(k)),
                                   placed[at(loop.child)].apply(loop.onChild.at(k)));
      if (open <= most) continue;
      most = open;
      widest = loop.crease;
    }
  }
  return widest;
}

double LoopSolver::gap(const Pose& placed) const {
  double most = 0;
  for (const Loop& loop : loops_)
    for (std::size_t k = 0; k < 2; ++k)
      most = std::max(most, distance(placed[at(loop.parent)].apply(loop.onParent.at(k)),
                                     placed[at(loop.child)].apply(loop.onChild.at(k))));
  return most;
}

void LoopSolver::measureLoops(const Pose& placed, std::vector<Angle>& angles) const {
  for (const Loop& loop : loops_) {
    const Transform& parent = placed[at(loop.parent)];
    const Point3 axis = unit(parent.apply(loop.onParent[0]) - parent.apply(loop.onParent[1]));
    const Point3 from = parent.normal();
    const Point3 to = placed[at(loop.child)].normal();
    double turn = std::atan2(dot(cross(from, to), axis), dot(from, to));
    const double declared = net_.creases[at(loop.crease)].angle.radians();
    if (std::abs(turn) > std::numbers::pi - 1e-3 && turn * declared < 0)
      turn += turn > 0 ? -2 * std::numbers::pi : 2 * std::numbers::pi;
    angles[at(loop.crease)] = Angle::radians(turn);
  }
}

}  // namespace creasewright
