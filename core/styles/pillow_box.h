#pragma once

#include "styles/style.h"

namespace creasewright {

Style pillowBox();

}  // namespace creasewright
