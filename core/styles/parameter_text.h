#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "styles/parameters.h"
#include "units/tool_grid.h"

namespace creasewright {

/// What a bare number means to somebody with these tools.
Unit unitOf(ToolGrid grid);

/// The raw value (nanometres, count or flag) that `text` gives a parameter of `kind`; nothing when
/// it cannot be read. Flags: 1, true, yes, 0, false, no.
std::optional<std::int64_t> readRaw(ParameterKind kind, std::string_view text, Unit unitless);

}  // namespace creasewright
