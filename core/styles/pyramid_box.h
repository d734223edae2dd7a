#pragma once

#include "styles/style.h"

namespace creasewright {

Style pyramidBox();

}  // namespace creasewright
