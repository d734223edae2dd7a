#pragma once

#include "units/length.h"

namespace creasewright {

/// Exact millimetres as a drawing says them: `mm(110)`, `mm(0.2)`. For constants only; what is no
/// whole number of nanometres does not compile.
consteval Length mm(double value) {
  const double nm = value * 1e6;
  const auto whole = static_cast<std::int64_t>(nm + (nm < 0 ? -0.5 : 0.5));
  const double off = nm - static_cast<double>(whole);
  if (off > 1e-3 || off < -1e-3) throw "no whole number of nanometres";
  return Length::nanometres(whole);
}

}  // namespace creasewright
