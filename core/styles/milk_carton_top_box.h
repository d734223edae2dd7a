#pragma once

#include "styles/style.h"

namespace creasewright {

Style milkCartonTopBox();

}  // namespace creasewright
