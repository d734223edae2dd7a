#pragma once

#include <string>

#include "base/problem.h"

namespace creasewright {

/// Whether a measure is outside its limits.
inline bool isLimit(const Problem& problem) {
  return problem.code == ProblemCode::ParameterTooSmall ||
         problem.code == ProblemCode::ParameterTooLarge;
}

/// The kind of the extra whose measure is outside its limits; nothing where the measure is the
/// style's, or the problem is none of a measure.
inline std::string extraOfMeasure(const Problem& problem) {
  if (!isLimit(problem) || problem.values.size() < 4) return {};
  const auto* kind = std::get_if<std::string>(&problem.values[3]);
  return kind == nullptr ? std::string() : *kind;
}

}  // namespace creasewright
