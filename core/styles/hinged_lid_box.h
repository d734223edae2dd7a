#pragma once

#include "styles/style.h"

namespace creasewright {

Style hingedLidBox();

}  // namespace creasewright
