#pragma once

#include <string_view>
#include <vector>

#include "base/worded.h"

namespace creasewright {

/// A code of a net and what a person reads for it.
struct CodeWords {
  std::string_view code;
  Worded words;
  Worded says = {};  ///< of a fold stage: what the hand does, as a teacher says it
};

/// Words for the codes that nets use: their fold stages, the parts of their panels' paths and the
/// names of their pieces. One code reads the same wherever it is used.
struct NetWords {
  std::vector<CodeWords> stages = {};
  std::vector<CodeWords> panels = {};
  std::vector<CodeWords> pieces = {};
};

/// Both.
inline NetWords operator+(NetWords a, const NetWords& b) {
  a.stages.insert(a.stages.end(), b.stages.begin(), b.stages.end());
  a.panels.insert(a.panels.end(), b.panels.begin(), b.panels.end());
  a.pieces.insert(a.pieces.end(), b.pieces.begin(), b.pieces.end());
  return a;
}

}  // namespace creasewright
