#pragma once

#include "styles/style.h"

namespace creasewright {

Style treatScoop();

}  // namespace creasewright
