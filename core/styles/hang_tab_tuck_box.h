#pragma once

#include "styles/style.h"

namespace creasewright {

Style hangTabTuckBox();

}  // namespace creasewright
