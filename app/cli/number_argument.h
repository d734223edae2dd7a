#pragma once

#include <optional>
#include <string>
#include <utility>

namespace creasewright {

/// A whole number within `limits` (least, most). Nothing when it is none; the problem is told.
std::optional<int> readNumber(const char* argument, const std::string& written,
                              std::pair<int, int> limits);

}  // namespace creasewright
