#pragma once

#include <string>

#include "base/problem.h"

namespace creasewright {

/// The kind of the extra whose measure is outside its limits; nothing where the measure is the
/// style's, or the problem is none of a measure.
inline std::string extraOfMeasure(const Problem& problem) {
  const bool limit = problem.code == ProblemCode::ParameterTooSmall ||
                     problem.code == ProblemCode::ParameterTooLarge;
  if (!limit || problem.values.size() < 4) return {};
  const auto* kind = std::get_if<std::string>(&problem.values[3]);
  return kind == nullptr ? std::string() : *kind;
}

}  // namespace creasewright
