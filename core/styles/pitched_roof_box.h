#pragma once

#include "styles/style.h"

namespace creasewright {

Style pitchedRoofBox();

}  // namespace creasewright
