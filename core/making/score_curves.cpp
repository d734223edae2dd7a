#include "making/score_curves.h"

#include <algorithm>
#include <cmath>

#include "making/hand_folds.h"

namespace creasewright {
namespace {

/// Whether the pieces of a line are more than one straight stroke, broken off here and there.
bool isCurved(const std::vector<FreeScore>& pieces) {
  const Segment& first = pieces.front().line;
  const Point along = unit(first.b - first.a);
  return pieces.size() > 2 && std::ranges::any_of(pieces, [along](const FreeScore& piece) {
           return std::abs(cross(along, unit(piece.line.b - piece.line.a))) > 1e-3;
         });
}

}  // namespace

DrawnScores drawnScores(const std::vector<FreeScore>& scores) {
  std::vector<Fold> folds;
  for (const FreeScore& score : scores) {
    Fold fold;
    fold.line = score.line;
    fold.valley = score.valley;
    folds.push_back(fold);
  }
  DrawnScores drawn;
  for (const std::vector<std::size_t>& line : handFolds(folds)) {
    std::vector<FreeScore> pieces;
    for (const std::size_t index : line) pieces.push_back(scores[index]);
    if (isCurved(pieces))
      drawn.curves.push_back(std::move(pieces));
    else
      drawn.straight.insert(drawn.straight.end(), pieces.begin(), pieces.end());
  }
  return drawn;
}

}  // namespace creasewright
