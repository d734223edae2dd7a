#pragma once

#include "styles/style.h"

namespace creasewright {

Style rolledWallTray();

}  // namespace creasewright
