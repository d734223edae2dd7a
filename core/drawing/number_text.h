#pragma once

#include <string>

namespace creasewright {

/// A decimal number for files: at most `decimals` places, no trailing zeros, never `-0`, the point
/// as decimal sign whatever the locale.
std::string numberText(double value, int decimals = 4);

}  // namespace creasewright
