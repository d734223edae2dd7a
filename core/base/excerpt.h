#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace creasewright {

/// The start of a text that came from outside, fit to stand in a one-line message: at most
/// `longest` bytes, cut between characters and closed with `...`; control characters and separators
/// of lines become blanks, bytes that are not UTF-8 become `?`.
std::string excerpt(std::string_view text, std::size_t longest = 60);

/// A path in the same form, cut in its middle so that the file's name still shows.
std::string pathExcerpt(std::string_view path);

/// Characters of UTF-8 text; each byte that is no part of one counts as one.
std::size_t characterCount(std::string_view text);

}  // namespace creasewright
