#include "drawing/number_text.h"

#include <array>
#include <charconv>

namespace creasewright {

std::string numberText(double value, int decimals) {
  std::array<char, 352> buffer{};  // room for the longest double in fixed notation
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                 std::chars_format::fixed, decimals);
  std::string text(buffer.data(), end.ptr);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : text;
}

}  // namespace creasewright
