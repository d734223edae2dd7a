#pragma once

#include "styles/style.h"

namespace creasewright {

Style partitionInsert();

}  // namespace creasewright
