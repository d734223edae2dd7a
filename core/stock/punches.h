#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "extras/punch.h"

namespace creasewright {

/// A table with the columns `shape` (`circle`, `scalloped circle`, …; a square is a rectangle),
/// `width` and `height` (empty = as wide). Lengths carry a unit (`1 3/8 in`, `50 mm`); between 3
/// and 150 mm. Errors: TableUnreadable, FileTooLarge, TooMany.
Result<std::vector<Punch>> readPunchTable(std::string_view csv, std::string_view where);

/// The same table, with all its columns.
std::string writePunchTable(const std::vector<Punch>& punches);

/// What a shape is called in such a table.
std::string punchShapeName(LabelShape shape);

}  // namespace creasewright
