#include "making/hand_folds.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kOnLine = 1e-2;    // mm
constexpr double kMeet = 1e-2;      // mm between the ends of a curve's pieces
constexpr double kCurveTurn = 0.3;  // sine of the turn from piece to piece: some 17 degrees

bool sameWay(const Fold& a, const Fold& b) { return a.loop == b.loop && a.valley == b.valley; }

bool collinear(const Segment& a, const Segment& b) {
  const Segment& longer = length(a) >= length(b) ? a : b;
  const Segment& other = length(a) >= length(b) ? b : a;
  const Point along = unit(longer.b - longer.a);
  return std::abs(cross(along, other.a - longer.a)) <= kOnLine &&
         std::abs(cross(along, other.b - longer.a)) <= kOnLine;
}

/// Two pieces of a curve: they meet at their ends and turn softly.
bool runOn(const Segment& a, const Segment& b) {
  for (const auto& [from, at] : {std::pair{a.a, a.b}, std::pair{a.b, a.a}})
    for (const auto& [start, to] : {std::pair{b.a, b.b}, std::pair{b.b, b.a}}) {
      if (distance(at, start) > kMeet) continue;
      const Point u = unit(at - from);
      const Point v = unit(to - start);
      if (dot(u, v) > 0 && std::abs(cross(u, v)) <= kCurveTurn) return true;
    }
  return false;
}

}  // namespace

std::vector<std::vector<std::size_t>> handFolds(const std::vector<Fold>& folds) {
  std::vector<std::vector<std::size_t>> lines;
  for (std::size_t i = 0; i < folds.size(); ++i) {
    if (folds[i].bend) continue;
    // Joins every line it belongs to: a piece may close the gap between two.
    std::vector<std::size_t> line{i};
    std::erase_if(lines, [&](const std::vector<std::size_t>& other) {
      const bool joins = std::ranges::any_of(other, [&](std::size_t k) {
        return sameWay(folds[k], folds[i]) &&
               (collinear(folds[k].line, folds[i].line) || runOn(folds[k].line, folds[i].line));
      });
      if (joins) line.insert(line.begin(), other.begin(), other.end());
      return joins;
    });
    std::ranges::sort(line);
    lines.push_back(std::move(line));
  }
  std::ranges::sort(lines, {}, [](const std::vector<std::size_t>& line) { return line.front(); });
  return lines;
}

}  // namespace creasewright
