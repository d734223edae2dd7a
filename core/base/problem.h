#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "base/problem_code.h"
#include "units/angle.h"
#include "units/length.h"

namespace creasewright {

enum class Severity { Error, Warning };

using ProblemValue = std::variant<Length, Angle, std::int64_t, double, std::string>;

/// What is wrong, where, and with which numbers: enough for the app to write one sentence, for a
/// script to act on, and for the window to show the place.
struct Problem {
  ProblemCode code{};
  std::string where;                 ///< panel, parameter, field or file, as the code says
  std::vector<ProblemValue> values;  ///< in the order given beside the code
  Severity severity = Severity::Error;

  bool operator==(const Problem&) const = default;
};

using Problems = std::vector<Problem>;

/// Whether nothing but warnings is among them.
inline bool onlyWarnings(const Problems& problems) {
  return std::ranges::all_of(
      problems, [](const Problem& p) { return p.severity == Severity::Warning; });
}

}  // namespace creasewright
