#include "making/hand_folds.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <optional>
#include <utility>

namespace creasewright {
namespace {

constexpr double kOneLine = 1e-2;   // mm
constexpr double kMeet = 1e-2;      // mm between the ends of a curve's pieces
constexpr double kCurveTurn = 0.3;  // sine of the turn from piece to piece: some 17 degrees

bool sameWay(const Fold& a, const Fold& b) { return a.loop == b.loop && a.valley == b.valley; }

bool collinear(const Segment& a, const Segment& b) {
  const Segment& longer = length(a) >= length(b) ? a : b;
  const Segment& other = length(a) >= length(b) ? b : a;
  const Point along = unit(longer.b - longer.a);
  return std::abs(cross(along, other.a - longer.a)) <= kOneLine &&
         std::abs(cross(along, other.b - longer.a)) <= kOneLine;
}

/// Two pieces of a curve: they meet at their ends and turn softly.
bool runOn(const Segment& a, const Segment& b) {
  for (const auto& [from, at] : {std::pair{a.a, a.b}, std::pair{a.b, a.a}})
    for (const auto& [start, to] : {std::pair{b.a, b.b}, std::pair{b.b, b.a}}) {
      if (std::abs(at.x - start.x) > kMeet || distance(at, start) > kMeet) continue;
      const Point u = unit(at - from);
      const Point v = unit(to - start);
      if (dot(u, v) > 0 && std::abs(cross(u, v)) <= kCurveTurn) return true;
    }
  return false;
}

/// Which folds belong together, every two of them compared once.
class Lines {
 public:
  explicit Lines(const std::vector<Fold>& folds) : curved_(folds.size()), first_(folds.size()) {
    std::iota(first_.begin(), first_.end(), std::size_t{0});
    std::vector<std::pair<std::size_t, std::size_t>> aligned;
    for (std::size_t i = 0; i < folds.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) {
        const Segment& a = folds[k].line;
        const Segment& b = folds[i].line;
        if (!sameWay(folds[k], folds[i])) continue;
        const bool onOneLine = collinear(a, b);
        const bool goesOn = runOn(a, b);
        if (goesOn && !onOneLine) curved_[i] = curved_[k] = true;
        if (folds[i].bend || folds[k].bend) continue;
        if (goesOn) join(i, k);
        if (onOneLine) aligned.emplace_back(i, k);
      }
    // The middles of two curves may lie on one line by chance.
    for (const auto& [i, k] : aligned)
      if (!curved_[i] && !curved_[k]) join(i, k);
  }

  /// The first fold of the line that a fold belongs to.
  std::size_t lineOf(std::size_t fold) {
    while (first_[fold] != fold) fold = first_[fold] = first_[first_[fold]];
    return fold;
  }

 private:
  void join(std::size_t a, std::size_t b) {
    const auto [low, high] = std::minmax({lineOf(a), lineOf(b)});
    first_[high] = low;
  }

  std::vector<bool> curved_;  // whether it turns into another
  std::vector<std::size_t> first_;
};

/// A piece of a line as it is run along.
struct Run {
  std::size_t fold;
  Point from, to;
};

std::optional<Run> runFrom(const std::vector<Fold>& folds, std::size_t fold, Point start) {
  const Segment& line = folds[fold].line;
  if (distance(line.a, start) <= kMeet) return Run{fold, line.a, line.b};
  if (distance(line.b, start) <= kMeet) return Run{fold, line.b, line.a};
  return std::nullopt;
}

/// The pieces of a line one after the other; nothing where they do not hang together from one end
/// to the other.
std::vector<Run> runAlong(const std::vector<Fold>& folds, const std::vector<std::size_t>& line) {
  const auto meetsAnother = [&](std::size_t fold, Point end) {
    return std::ranges::any_of(
        line, [&](std::size_t k) { return k != fold && runFrom(folds, k, end).has_value(); });
  };
  std::vector<Run> runs;
  for (const std::size_t fold : line) {
    const Segment& piece = folds[fold].line;
    if (!meetsAnother(fold, piece.a)) runs = {{fold, piece.a, piece.b}};
    if (!meetsAnother(fold, piece.b)) runs = {{fold, piece.b, piece.a}};
    if (!runs.empty()) break;
  }
  while (!runs.empty() && runs.size() < line.size()) {
    std::optional<Run> next;
    for (const std::size_t fold : line)
      if (!next && std::ranges::find(runs, fold, &Run::fold) == runs.end())
        next = runFrom(folds, fold, runs.back().to);
    if (!next) return {};
    runs.push_back(*next);
  }
  return runs;
}

/// A curve that turns the other way at one point only has a tip there: two curves that meet.
std::vector<std::vector<std::size_t>> partedAtTips(const std::vector<Fold>& folds,
                                                   const std::vector<std::size_t>& line) {
  const std::vector<Run> runs = runAlong(folds, line);
  if (runs.size() < 4) return {line};
  std::vector<double> turns;
  for (std::size_t i = 0; i + 1 < runs.size(); ++i)
    turns.push_back(
        cross(unit(runs[i].to - runs[i].from), unit(runs[i + 1].to - runs[i + 1].from)));
  std::vector<std::vector<std::size_t>> parts(1);
  for (std::size_t i = 0; i < runs.size(); ++i) {
    parts.back().push_back(runs[i].fold);
    const bool tip = i > 0 && i + 1 < turns.size() && turns[i - 1] * turns[i] < -1e-6 &&
                     turns[i] * turns[i + 1] < -1e-6;
    if (tip) parts.emplace_back();
  }
  for (std::vector<std::size_t>& part : parts) std::ranges::sort(part);
  return parts;
}

/// Whether the pieces of a line are more than one straight stroke, broken off here and there.
bool isCurved(const std::vector<Fold>& folds, const std::vector<std::size_t>& line) {
  constexpr double kParallel = 1e-3;  // sine
  const auto along = [&](std::size_t fold) {
    return unit(folds[fold].line.b - folds[fold].line.a);
  };
  const Point first = along(line.front());
  return line.size() > 2 && std::ranges::any_of(line, [&](std::size_t fold) {
           return std::abs(cross(first, along(fold))) > kParallel;
         });
}

}  // namespace

std::vector<HandFold> handFolds(const std::vector<Fold>& folds) {
  Lines lines(folds);
  std::map<std::size_t, std::vector<std::size_t>> whole;
  for (std::size_t i = 0; i < folds.size(); ++i)
    if (!folds[i].bend) whole[lines.lineOf(i)].push_back(i);
  std::vector<HandFold> found;
  for (const auto& [first, line] : whole)
    for (std::vector<std::size_t>& part : partedAtTips(folds, line)) {
      const bool curved = isCurved(folds, part);
      found.push_back({std::move(part), curved});
    }
  std::ranges::sort(found, {}, [](const HandFold& line) { return line.folds.front(); });
  return found;
}

}  // namespace creasewright
