#pragma once

#include "document/build.h"
#include "guide/guide.h"

namespace creasewright {

/// The cautions that fit what the guide does and what the design is for, each once. Looks at the
/// guide's steps, pieces and supplies.
std::vector<CautionCode> cautionsFor(const BuiltDesign& built, const Guide& guide);

}  // namespace creasewright
