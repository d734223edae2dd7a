#pragma once

#include <vector>

#include "document/build.h"
#include "units/paper.h"

namespace creasewright {

/// Warnings that take the sheets at hand and the paper in the printer: blanks larger than every
/// sheet (BlankOverSheets), a template of more than six pages (ManyPages).
Problems paperWarnings(const BuiltDesign& built, const std::vector<Paper>& sheets,
                       const Paper& printed);

}  // namespace creasewright
