#pragma once

#include "styles/style.h"

namespace creasewright {

Style bookWrap();

}  // namespace creasewright
