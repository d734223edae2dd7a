#pragma once

#include <span>
#include <string_view>

#include "base/result.h"
#include "styles/style.h"

namespace creasewright {

/// All styles in the order in which they are shown.
std::span<const Style> styles();

/// Error: UnknownStyle.
Result<const Style*> findStyle(std::string_view id);

}  // namespace creasewright
