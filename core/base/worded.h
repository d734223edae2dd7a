#pragma once

#include <string_view>

namespace creasewright {

/// A text in English with the context in which it is translated. Core only carries it; whoever
/// shows it looks the translation up. It lives as long as the program.
class Worded {
 public:
  constexpr Worded() = default;
  [[nodiscard]] constexpr const char* context() const { return context_; }
  [[nodiscard]] constexpr const char* source() const { return source_; }
  [[nodiscard]] constexpr bool empty() const { return *source_ == '\0'; }
  constexpr operator std::string_view() const { return source_; }

  /// Marks a text where it is meant, so that the tool that extracts texts finds it (it knows
  /// `worded` as an alias of QT_TRANSLATE_NOOP): `worded("styles", "Ridge sleeve")`.
  friend consteval Worded worded(const char* context, const char* source);

 private:
  constexpr Worded(const char* context, const char* source) : context_(context), source_(source) {}
  const char* context_ = "";
  const char* source_ = "";
};

consteval Worded worded(const char* context, const char* source) { return {context, source}; }

}  // namespace creasewright
