#pragma once

#include "styles/style.h"

namespace creasewright {

Style explodingBox();

}  // namespace creasewright
