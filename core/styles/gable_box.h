#pragma once

#include "styles/style.h"

namespace creasewright {

Style gableBox();

}  // namespace creasewright
