#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "kits/plan_kit.h"
#include "units/paper.h"

namespace creasewright {

/// Sizes of a label, cut apart or stuck on.
struct LabelSheet {
  Paper paper;
  Length width = Length::nanometres(90'000'000);
  Length height = Length::nanometres(50'000'000);
};

/// A label for each bag: its taker's name, or a line to write it on, the kit's title and what is in
/// the bag. As many to a page as fit, in rows, with lines to cut along. Empty when not even one
/// label fits.
std::vector<Drawing> bagLabels(const ClassKit& kit, const KitPlan& plan, const LabelSheet& sheet);

}  // namespace creasewright
