#pragma once

#include <optional>
#include <string>
#include <utility>

#include "units/length.h"
#include "units/millimetres.h"

namespace creasewright {

/// The least and the most that a side may measure.
struct SideLimits {
  Length least = mm(20);
  Length most = mm(2000);
};

/// Width and height as `90x50mm` or `8 1/2x11in`; a unit after the second serves both, and
/// millimetres where there is none. Nothing when it cannot be read; the problem is told.
std::optional<std::pair<Length, Length>> readSize(const char* argument, const std::string& written,
                                                  const SideLimits& limits = {});

}  // namespace creasewright
