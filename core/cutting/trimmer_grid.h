#pragma once

#include "cutting/cutting.h"
#include "units/tool_grid.h"

namespace creasewright {

/// The same blanks of a sheet, each as large as asked or larger, with every setting on the
/// trimmer's grid: sizes are rounded up where what is left over gives the room. Parts of a sheet
/// that leave none keep their sizes and settings.
CutNode ontoTrimmerGrid(const CutNode& sheet, ToolGrid grid);

}  // namespace creasewright
