#pragma once

#include "styles/style.h"

namespace creasewright {

Style twoPieceBox();

}  // namespace creasewright
