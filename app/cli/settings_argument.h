#pragma once

#include <string_view>
#include <vector>

namespace creasewright {

/// A `KEY=VALUE` as written; without an equals sign it is all key. Parts of the argument it is
/// read from, which must outlive it.
struct Setting {
  std::string_view written;
  std::string_view key;
  std::string_view value;
  bool equals = false;
};

/// `KEY=VALUE`, parted at the first equals sign; at the last for a key that may hold one, as the
/// name of a file may.
Setting readSetting(std::string_view written, bool atLast = false);

/// What is named before the colon of `HEAD:KEY=VALUE,KEY=VALUE`, and what is set.
struct HeadedSettings {
  std::string_view head;
  std::vector<Setting> settings;
};

/// The value of the key `takesRest` may hold commas: it goes to the end, or to a comma with another
/// key (small letters, digits, hyphens and slashes, with no space before) and an equals sign behind
/// it.
HeadedSettings readSettings(std::string_view argument, std::string_view takesRest);

}  // namespace creasewright
