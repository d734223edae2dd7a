#pragma once

#include <vector>

#include "styles/parameter_spec.h"

namespace creasewright {

/// How far an extra lies from its place, `across` and `up`, and its `turn`.
std::vector<ParameterSpec> placeMeasures();

}  // namespace creasewright
