#pragma once

#include "styles/style.h"

namespace creasewright {

Style drawerBox();

}  // namespace creasewright
