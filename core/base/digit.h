#pragma once

namespace creasewright {

/// Whether it is one of 0 to 9, whatever the language of the machine.
constexpr bool isDigit(char c) { return c >= '0' && c <= '9'; }

}  // namespace creasewright
