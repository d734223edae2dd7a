#pragma once

#include "styles/style.h"

namespace creasewright {

// One maker per style, each defined in the file of its name; the registry calls every one once.
Style framedTray();
Style bellyBand();
Style straightTuckBox();

}  // namespace creasewright
