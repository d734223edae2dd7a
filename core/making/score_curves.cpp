#include "making/score_curves.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace creasewright {
namespace {

constexpr double kSame = 1e-3;        // mm, between the end of a piece and the next
constexpr double kSharpestTurn = 35;  // degrees
constexpr double kSoftestTurn = 1e-6;
constexpr std::size_t kFewestPieces = 3;

double turnAt(Point before, Point at, Point after) {
  const Point a = at - before;
  const Point b = after - at;
  return std::atan2(cross(a, b), dot(a, b)) * 180 / std::numbers::pi;
}

/// A chain of pieces on its way to a curve.
struct Chain {
  Polyline line;
  double turns = 0;  ///< its sense, zero as long as it is one piece

  /// Goes on to `next` from the end of the line, when that makes the same curve.
  bool extend(Point next) {
    const double turn = turnAt(line[line.size() - 2], line.back(), next);
    if (std::abs(turn) > kSharpestTurn || std::abs(turn) < kSoftestTurn || turn * turns < 0)
      return false;
    turns = turn;
    line.push_back(next);
    return true;
  }
};

/// Adds all pieces that go on from the chain's end and takes them out of the list.
void grow(Chain& chain, std::vector<Segment>& pieces) {
  for (std::size_t i = 0; i < pieces.size();) {
    const Point end = chain.line.back();
    const Segment& piece = pieces[i];
    const bool joined = (distance(piece.a, end) <= kSame && chain.extend(piece.b)) ||
                        (distance(piece.b, end) <= kSame && chain.extend(piece.a));
    if (!joined) {
      ++i;
      continue;
    }
    pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(i));
    i = 0;
  }
}

}  // namespace

HandLines handLines(const std::vector<Segment>& pieces) {
  HandLines found;
  std::vector<Segment> left = pieces;
  while (!left.empty()) {
    const Segment first = left.front();
    left.erase(left.begin());
    std::vector<Segment> rest = left;
    Chain chain{{first.a, first.b}};
    grow(chain, rest);
    std::ranges::reverse(chain.line);
    chain.turns = -chain.turns;
    grow(chain, rest);
    if (chain.line.size() > kFewestPieces) {
      found.curves.push_back(std::move(chain.line));
      left = std::move(rest);
    } else {
      found.straight.push_back(first);
    }
  }
  return found;
}

HandLines handLines(const std::vector<FreeScore>& scores) {
  std::vector<Segment> pieces;
  for (const FreeScore& score : scores) pieces.push_back(score.line);
  return handLines(pieces);
}

}  // namespace creasewright
