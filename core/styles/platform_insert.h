#pragma once

#include "styles/style.h"

namespace creasewright {

Style platformInsert();

}  // namespace creasewright
