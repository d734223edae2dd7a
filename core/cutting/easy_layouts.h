#pragma once

#include <vector>

#include "cutting/cutting.h"
#include "cutting/work.h"

namespace creasewright {

/// One way to cut a sheet of some kind that is no trouble, and how often the trimmer is set for it.
struct EasyLayout {
  int stock = 0;
  std::vector<int> counts;  ///< by demand
  int settings = 0;
  CutNode sheet;
};

/// Layouts to choose an easy plan from, no two of the same blanks from the same kind of sheet:
/// strips of one to three sizes, as many as a sheet holds; whole sets of all blanks; and those of
/// `others`. Demands of no quantity are left out.
std::vector<EasyLayout> easyLayouts(const std::vector<CutSheet>& stock,
                                    const std::vector<BlankDemand>& demands,
                                    const std::vector<Layout>& others, Work& work);

}  // namespace creasewright
