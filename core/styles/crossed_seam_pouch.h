#pragma once

#include "styles/style.h"

namespace creasewright {

Style crossedSeamPouch();

}  // namespace creasewright
