#pragma once

#include "styles/style.h"

namespace creasewright {

Style gussetedBag();

}  // namespace creasewright
