#pragma once

#include "styles/style.h"

namespace creasewright {

Style petalPrism();

}  // namespace creasewright
