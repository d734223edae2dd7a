#pragma once

#include "styles/style.h"

namespace creasewright {

/// The parameters a style is built with so that as many sides of its blanks as can be lie on the
/// tool grid: a flap that gives way (ParameterSpec::givesWay) takes the rest of each side that does
/// not. It becomes narrower by less than a step, or wider where it would lose more than a quarter
/// or fall below its limit. Walls stay as they are, and of the settings at the board at most that
/// of the flap's own score leaves the grid; sides that no flap can bring onto the grid so stay off
/// it. `parameters` must lie inside their limits.
Parameters blanksOnGrid(const Style& style, const Parameters& parameters, const Workbench& bench);

}  // namespace creasewright
