#pragma once

#include <utility>

#include "styles/limits.h"

namespace creasewright {

/// A parameter as a style writes it down, in the order of a drawing's legend:
/// `measure("depth", worded("styles", "Depth"), worded("styles", "Of the tray.")).standard(mm(30))
/// .from(smallestFlap()).to(mm(300))`.
class ParameterRow {
 public:
  explicit ParameterRow(ParameterSpec spec) : spec_(std::move(spec)) {}
  operator ParameterSpec() const { return spec_; }

  ParameterRow& standard(Length value) { return standard(value.nm()); }
  ParameterRow& standard(std::int64_t value) { return spec_.standard = value, *this; }
  ParameterRow& from(Limit least) { return spec_.minimum = std::move(least), *this; }
  ParameterRow& from(std::int64_t least) { return from(fixedCount(least)); }
  ParameterRow& to(Limit most) { return spec_.maximum = std::move(most), *this; }
  ParameterRow& to(std::int64_t most) { return to(fixedCount(most)); }
  /// A flap that may take the rest, so that blanks lie on the grid (fit/blank_on_grid.h).
  ParameterRow& givesWay() { return spec_.givesWay = true, *this; }
  /// Of a toggle: at first it is on.
  ParameterRow& on() { return standard(1); }

 private:
  ParameterSpec spec_;
};

/// A length; its default is 0 and it has no limits until they are said.
inline ParameterRow measure(std::string_view key, Worded title, Worded hint) {
  return ParameterRow({key, title, hint});
}

/// A whole number.
inline ParameterRow number(std::string_view key, Worded title, Worded hint) {
  return ParameterRow({key, title, hint, ParameterKind::Count});
}

/// On or off; at first off.
inline ParameterRow toggle(std::string_view key, Worded title, Worded hint) {
  return ParameterRow({key, title, hint, ParameterKind::Flag, 0, fixedCount(0), fixedCount(1)});
}

/// One of several; at first the first.
inline ParameterRow choice(std::string_view key, Worded title, Worded hint,
                           std::vector<Worded> choices) {
  const auto last = static_cast<std::int64_t>(choices.size()) - 1;
  return ParameterRow({key, title, hint, ParameterKind::Count, 0, fixedCount(0), fixedCount(last),
                       std::move(choices)});
}

}  // namespace creasewright
