#pragma once

#include "styles/style.h"

namespace creasewright {

Style envelope();

}  // namespace creasewright
