#pragma once

#include <string>

#include "edits/kinds/edit.h"
#include "units/length.h"

namespace creasewright {

/// A formula that does not mean another length on another tool grid: one that comes to a bare
/// number gets the unit. What it names does not matter, only that names are lengths.
std::string withUnit(const std::string& formula, Unit unit);

/// A change by hand that means the same on every tool grid: each length that is written as a bare
/// number, which counts in the unit of the grid, gets `unit`.
Edit withUnits(Edit edit, Unit unit);

}  // namespace creasewright
