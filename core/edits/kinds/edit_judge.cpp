#include "edits/kinds/edit_judge.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "edits/kinds/crease_site.h"
#include "folding/fold_check.h"
#include "folding/loop_closure.h"
#include "net/flat_net.h"
#include "net/net_problems.h"

namespace creasewright {
namespace {

/// How much of a line an outline's edges lie on, mm.
double covered(const Segment& line, const Polygon& outline) {
  constexpr double kNextTo = 1e-4;  // mm
  const double whole = length(line);
  const Point along = unit(line.b - line.a);
  double sum = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Point a = outline[i] - line.a;
    const Point b = outline[(i + 1) % outline.size()] - line.a;
    if (std::abs(cross(along, a)) > kNextTo || std::abs(cross(along, b)) > kNextTo) continue;
    const auto [low, high] = std::minmax({dot(along, a), dot(along, b)});
    sum += std::max(0.0, std::min(high, whole) - std::max(low, 0.0));
  }
  return sum;
}

}  // namespace

JudgedNet judgeNet(const Net& net, double caliper) {
  JudgedNet judged{flatten(net), pose(net, 1.0), {}};
  judged.problems = findProblems(net, judged.flat, caliper);
  std::ranges::move(checkMates(net, judged.folded, caliper), std::back_inserter(judged.problems));
  std::ranges::move(checkLoops(net, judged.folded), std::back_inserter(judged.problems));
  return judged;
}

bool isWorse(const Problems& before, const Problems& now) {
  return std::ranges::any_of(
      now,
      [&](const Problem& problem) {
        return std::ranges::none_of(
            before,
            [&](const Problem& old) {
              return old.code == problem.code && old.where == problem.where;
            });
      });
}

bool keepsFolds(const Net& net, int panel, const Polygon& before, const Polygon& now) {
  constexpr double kOneLine = 1e-3;  // mm
  return std::ranges::none_of(foldsOn(net, panel), [&](const FoldOn& fold) {
    return covered(fold.line, before) - covered(fold.line, now) > kOneLine;
  });
}

}  // namespace creasewright
