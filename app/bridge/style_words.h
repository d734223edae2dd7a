#pragma once

#include <span>

namespace creasewright {

/// Every title, summary and hint of the styles, as source text for the context "styles".
std::span<const char* const> styleWords();

}  // namespace creasewright
