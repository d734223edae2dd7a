#pragma once

#include "styles/style.h"

namespace creasewright {

Style taperedCup();

}  // namespace creasewright
