#pragma once

#include <nlohmann/json.hpp>

#include "base/problem.h"

namespace creasewright {

/// A list of problems for other programs: code, severity, place, values, and its sentence with
/// lengths in `unit`.
nlohmann::ordered_json problemsJson(const Problems& problems, Unit unit);

/// Each problem as a sentence, warnings marked; "All checks hold." where `holds`.
void printProblems(const Problems& problems, bool holds, Unit unit);

}  // namespace creasewright
