#include "making/score_curves.h"

#include "making/hand_folds.h"

namespace creasewright {
DrawnScores drawnScores(const std::vector<FreeScore>& scores) {
  std::vector<Fold> folds;
  for (const FreeScore& score : scores) {
    Fold fold;
    fold.line = score.line;
    fold.valley = score.valley;
    folds.push_back(fold);
  }
  DrawnScores drawn;
  for (const HandFold& line : handFolds(folds)) {
    std::vector<FreeScore> pieces;
    for (const std::size_t index : line.folds) pieces.push_back(scores[index]);
    if (line.curved)
      drawn.curves.push_back(std::move(pieces));
    else
      drawn.straight.insert(drawn.straight.end(), pieces.begin(), pieces.end());
  }
  return drawn;
}

}  // namespace creasewright
