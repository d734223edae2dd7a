#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace creasewright {

/// Bytes as text: RFC 4648, section 4, with padding and without line breaks.
std::string toBase64(std::string_view bytes);

/// The bytes of such a text; nothing when it is none.
std::optional<std::string> fromBase64(std::string_view text);

}  // namespace creasewright
