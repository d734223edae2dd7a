#include "cutting/price_lanes.h"

namespace creasewright {

RowKernels plainKernels() { return {joinRows, joinCuts}; }

RowKernels rowKernels() {
#if defined(__x86_64__)
  static const bool wide = __builtin_cpu_supports("avx2") != 0;
  return wide ? wideKernels() : plainKernels();
#else
  return plainKernels();
#endif
}

}  // namespace creasewright
