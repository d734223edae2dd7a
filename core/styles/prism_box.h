#pragma once

#include "styles/style.h"

namespace creasewright {

Style prismBox();

}  // namespace creasewright
