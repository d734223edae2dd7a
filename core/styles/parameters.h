#pragma once

#include <map>
#include <string>
#include <string_view>

#include "units/length.h"

namespace creasewright {

enum class ParameterKind {
  Length,
  Count,  ///< a whole number
  Flag    ///< 0 or 1
};

/// The values of a style's parameters by key: lengths in nanometres, counts and flags as they are.
class Parameters {
 public:
  void set(std::string_view key, Length value) { values_[std::string(key)] = value.nm(); }
  void setCount(std::string_view key, std::int64_t value) { values_[std::string(key)] = value; }

  [[nodiscard]] bool has(std::string_view key) const { return values_.contains(key); }
  /// Zero when the key is not set.
  [[nodiscard]] Length length(std::string_view key) const { return Length::nanometres(raw(key)); }
  [[nodiscard]] double mm(std::string_view key) const { return length(key).mm(); }
  [[nodiscard]] std::int64_t count(std::string_view key) const { return raw(key); }
  [[nodiscard]] bool flag(std::string_view key) const { return raw(key) != 0; }
  [[nodiscard]] std::int64_t raw(std::string_view key) const {
    const auto found = values_.find(key);
    return found == values_.end() ? 0 : found->second;
  }

  [[nodiscard]] auto begin() const { return values_.begin(); }
  [[nodiscard]] auto end() const { return values_.end(); }
  bool operator==(const Parameters&) const = default;

 private:
  std::map<std::string, std::int64_t, std::less<>> values_;
};

}  // namespace creasewright
