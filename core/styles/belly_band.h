#pragma once

#include "styles/style.h"

namespace creasewright {

Style bellyBand();

}  // namespace creasewright
