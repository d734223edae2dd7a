#include "styles/parameter_text.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "units/length_text.h"

namespace creasewright {
namespace {

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

std::optional<std::int64_t> readCount(std::string_view text) {
  std::int64_t number = 0;
  const char* end = text.data() + text.size();
  const auto result = std::from_chars(text.data(), end, number);
  if (text.empty() || result.ec != std::errc() || result.ptr != end) return std::nullopt;
  return number;
}

std::optional<std::int64_t> readFlag(std::string_view text) {
  constexpr std::array<std::string_view, 3> kYes{"1", "true", "yes"};
  constexpr std::array<std::string_view, 3> kNo{"0", "false", "no"};
  if (std::ranges::find(kYes, text) != kYes.end()) return 1;
  if (std::ranges::find(kNo, text) != kNo.end()) return 0;
  return std::nullopt;
}

}  // namespace

Unit unitOf(ToolGrid grid) {
  const bool inches = !grid.isNone() && grid.step().nm() % Length::inches(1, 64).nm() == 0;
  return inches ? Unit::Inch : Unit::Millimetre;
}

std::optional<std::int64_t> readRaw(ParameterKind kind, std::string_view text, Unit unitless) {
  switch (kind) {
    case ParameterKind::Length: {
      const Result<Length> length = parseLength(text, unitless);
      if (!length) return std::nullopt;
      return length->nm();
    }
    case ParameterKind::Count:
      return readCount(trimmed(text));
    case ParameterKind::Flag:
      return readFlag(trimmed(text));
  }
  return std::nullopt;
}

}  // namespace creasewright
