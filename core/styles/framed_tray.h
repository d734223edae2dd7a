#pragma once

#include "styles/style.h"

namespace creasewright {

Style framedTray();

}  // namespace creasewright
