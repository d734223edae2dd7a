#pragma once

#include "styles/style.h"

namespace creasewright {

Style openSleeve();

}  // namespace creasewright
