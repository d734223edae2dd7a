#pragma once

#include <vector>

#include "kits/cutting.h"

namespace creasewright {

/// One cut at the trimmer: the part lies against the fence on its left or lower edge.
struct TrimCut {
  int number = 1;
  Length setting;        ///< from the fence to the blade
  bool upright = false;  ///< along the sheet's height, else along its width
  Length x, y, length;   ///< where the cut starts in the sheet's frame, and how long it is
};

/// Cuts of a layout in an order a person can follow: each part is finished before the next is taken
/// up, and a strip is cut off before it is cut across.
std::vector<TrimCut> trimSteps(const Layout& layout);

/// What is left over, the largest first; parts narrower than `least` are scrap and left out.
struct Offcut {
  Length width, height;
  int count = 1;
};
std::vector<Offcut> offcutsOf(const Layout& layout, Length least);

/// How many blanks of each demand one sheet of a layout gives.
std::vector<int> blanksOf(const Layout& layout, std::size_t demands);

}  // namespace creasewright
