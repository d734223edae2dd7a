#include "cli/settings_argument.h"

#include <algorithm>
#include <utility>

namespace creasewright {

namespace {

/// What stands before the first `mark`; taken off `rest` together with it.
std::string_view takeUntil(char mark, std::string_view& rest) {
  const std::size_t end = std::min(rest.find(mark), rest.size());
  const std::string_view taken = rest.substr(0, end);
  rest.remove_prefix(std::min(end + 1, rest.size()));
  return taken;
}

bool isKey(std::string_view written) {
  constexpr std::string_view kLetters = "abcdefghijklmnopqrstuvwxyz0123456789-/";
  return !written.empty() && written.find_first_not_of(kLetters) == std::string_view::npos;
}

/// What stands before a comma that another key and an equals sign follow.
std::string_view takeUntilKey(std::string_view& rest) {
  for (std::size_t comma = rest.find(','); comma != std::string_view::npos;
       comma = rest.find(',', comma + 1)) {
    const Setting next = readSetting(rest.substr(comma + 1));
    if (!next.equals || !isKey(next.key)) continue;
    const std::string_view taken = rest.substr(0, comma);
    rest.remove_prefix(comma + 1);
    return taken;
  }
  return std::exchange(rest, {});
}

}  // namespace

Setting readSetting(std::string_view written, bool atLast) {
  const std::size_t equals = atLast ? written.rfind('=') : written.find('=');
  if (equals == std::string_view::npos) return {written, written, {}, false};
  return {written, written.substr(0, equals), written.substr(equals + 1), true};
}

HeadedSettings readSettings(std::string_view argument, std::string_view takesRest) {
  HeadedSettings read{takeUntil(':', argument), {}};
  while (!argument.empty()) {
    const Setting whole = readSetting(argument);
    const bool rest = whole.equals && whole.key == takesRest;
    std::string_view taken = rest ? takeUntilKey(argument) : takeUntil(',', argument);
    read.settings.push_back(readSetting(taken));
  }
  return read;
}

}  // namespace creasewright
