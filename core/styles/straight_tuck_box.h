#pragma once

#include "styles/style.h"

namespace creasewright {

Style straightTuckBox();

}  // namespace creasewright
