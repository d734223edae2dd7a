#pragma once

#include <vector>

#include "guide/sheet_steps.h"

namespace creasewright {

/// One step for each fold stage that moves a panel or closes a mate.
std::vector<Step> foldSteps(const PiecePlans& plans);

}  // namespace creasewright
