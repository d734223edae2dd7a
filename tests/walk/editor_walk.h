#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "support/random.h"

namespace creasewright::testing {

/// What a walk did and found.
struct WalkReport {
  std::map<std::string, int> actions;  ///< by name: how often
  std::map<std::string, int> made;     ///< by kind of edit: added, and made in the net
  std::map<std::string, int> told;     ///< by kind of edit: added, and told as broken
  std::vector<std::string> faults;     ///< the first few, with the number of the action
};

/// Does so many random things to an open design: pulls lines, types measures, adds edits, changes,
/// moves, switches and removes them, undoes, redoes, saves, loads, changes product and style. After
/// each the design must be what the action says, its file must give it back, every problem must
/// have words, and undoing must give the bytes of before. `folder` takes the files that are saved.
WalkReport walkEditor(int actions, Random& random, const std::string& folder);

}  // namespace creasewright::testing
