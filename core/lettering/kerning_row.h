#pragma once

#include <string_view>

namespace creasewright {

/// Letters of which each stands closer before each of some others.
struct KerningRow {
  std::u16string_view before;
  int by = 0;  ///< 1/1000 of the type size, less than 0
  std::u16string_view after;
};

}  // namespace creasewright
