#pragma once

#include <string>
#include <vector>

#include "net/flat_net.h"

namespace creasewright {

/// A crease of the sheet, as the hand folds it.
struct Fold {
  Segment line;    ///< blank coordinates, mm
  int crease = 0;  ///< index into Net::creases
  int parent = 0;  ///< panels on either side
  int child = 0;
  Angle angle;          ///< after the stage, else final; positive = valley seen from the drawn face
  bool bend = false;    ///< not scored: the card is curled along the line
  bool valley = false;  ///< the way it is first folded: towards the viewer of the drawn face
  bool opens = false;   ///< in its stage it is opened again, not folded farther
  bool loop = false;    ///< follows by itself when the folds of its loop are made
};

/// One movement of the model and what it brings together.
struct FoldStage {
  std::string code;  ///< as Net::stages
  std::vector<Fold> folds;
  std::vector<int> mates;       ///< indices into Net::mates that close in this stage
  std::vector<BendCode> bends;  ///< here the card must give
};

struct FoldPlan {
  std::vector<Fold> burnish;  ///< all scored folds, to be folded and pressed before assembly
  std::vector<FoldStage> stages;
};

/// A mate closes in the last stage that moves its flap against its target.
FoldPlan planFolds(const Net& net, const FlatNet& flat);

}  // namespace creasewright
