#pragma once

#include "styles/style.h"

namespace creasewright {

Style cardWallet();

}  // namespace creasewright
