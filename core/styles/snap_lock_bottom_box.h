#pragma once

#include "styles/style.h"

namespace creasewright {

Style snapLockBottomBox();

}  // namespace creasewright
