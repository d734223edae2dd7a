#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "kits/kit_plan.h"
#include "units/paper.h"

namespace creasewright {

/// A label for each bag: its taker's name, or a line to write it on, the kit's title and what is in
/// the bag, in type of 6.5 pt at least: in fewer words, then on higher labels, where that takes
/// more room. Of the kit's size, as many to a page as fit, in rows, with lines to cut along. Empty
/// when not even one label fits.
std::vector<Drawing> bagLabels(const KitPlan& plan, Unit unit, const Paper& paper);

}  // namespace creasewright
