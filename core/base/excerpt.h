#pragma once

#include <string>
#include <string_view>

namespace creasewright {

/// The start of a text that came from outside, fit to stand in a one-line message: at most 60
/// bytes, cut between characters and closed with `...`; control characters become blanks and bytes
/// that are not UTF-8 become `?`.
std::string excerpt(std::string_view text);

}  // namespace creasewright
