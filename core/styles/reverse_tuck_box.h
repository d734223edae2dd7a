#pragma once

#include "styles/style.h"

namespace creasewright {

Style reverseTuckBox();

}  // namespace creasewright
