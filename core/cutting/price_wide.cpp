#include "cutting/price_lanes.h"

namespace creasewright {

RowKernels wideKernels() { return {joinRows, joinCuts}; }

}  // namespace creasewright
