#include "making/hand_folds.h"

#include <algorithm>
#include <cmath>
#include <optional>

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

/// Whether a piece turns into another: the middles of two curves may lie on one line by chance.
std::vector<bool> inCurves(const std::vector<Fold>& folds) {
  std::vector<bool> curved(folds.size());
  for (std::size_t i = 0; i < folds.size(); ++i)
    curved[i] = std::ranges::any_of(folds, [&](const Fold& other) {
      return sameWay(other, folds[i]) && runOn(other.line, folds[i].line) &&
             !collinear(other.line, folds[i].line);
    });
  return curved;
}

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

}  // namespace

std::vector<std::vector<std::size_t>> handFolds(const std::vector<Fold>& folds) {
  const std::vector<bool> curved = inCurves(folds);
  std::vector<std::vector<std::size_t>> lines;
  for (std::size_t i = 0; i < folds.size(); ++i) {
    if (folds[i].bend) continue;
    // Joins every line it belongs to: a piece may close the gap between two.
    std::vector<std::size_t> line{i};
    std::erase_if(lines, [&](const std::vector<std::size_t>& other) {
      const bool joins = std::ranges::any_of(other, [&](std::size_t k) {
        if (!sameWay(folds[k], folds[i])) return false;
        const bool straight = !curved[k] && !curved[i];
        return (straight && collinear(folds[k].line, folds[i].line)) ||
               runOn(folds[k].line, folds[i].line);
      });
      if (joins) line.insert(line.begin(), other.begin(), other.end());
      return joins;
    });
    std::ranges::sort(line);
    lines.push_back(std::move(line));
  }
  std::vector<std::vector<std::size_t>> parted;
  for (const std::vector<std::size_t>& line : lines)
    for (std::vector<std::size_t>& part : partedAtTips(folds, line))
      parted.push_back(std::move(part));
  std::ranges::sort(parted, {}, [](const std::vector<std::size_t>& line) { return line.front(); });
  return parted;
}

}  // namespace creasewright
