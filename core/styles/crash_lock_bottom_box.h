#pragma once

#include "styles/style.h"

namespace creasewright {

Style crashLockBottomBox();

}  // namespace creasewright
