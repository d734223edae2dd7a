#include "cli/settings_argument.h"

#include <algorithm>

namespace creasewright {

namespace {

/// What stands before the first `mark`; taken off `rest` together with it.
std::string_view takeUntil(char mark, std::string_view& rest) {
  const std::size_t end = std::min(rest.find(mark), rest.size());
  const std::string_view taken = rest.substr(0, end);
  rest.remove_prefix(std::min(end + 1, rest.size()));
  return taken;
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
    read.settings.push_back(rest ? whole : readSetting(takeUntil(',', argument)));
    if (rest) break;
  }
  return read;
}

}  // namespace creasewright
