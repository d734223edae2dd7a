#pragma once

#include "styles/style.h"

namespace creasewright {

Style wedgeBox();

}  // namespace creasewright
