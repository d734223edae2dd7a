#pragma once

#include <string>
#include <string_view>

namespace creasewright {

/// `text` fit to stand in XML 1.0 and HTML, in an element or between quotation marks: `&`, `<`, `>`
/// and `"` are written as entities; a control character becomes a blank, and what is no character
/// of XML (U+FFFE, U+FFFF, halves of pairs, bytes that are not UTF-8) becomes U+FFFD.
std::string xmlText(std::string_view text);

}  // namespace creasewright
