#pragma once

#include "edits/kinds/edit_kind.h"
#include "units/millimetres.h"

namespace creasewright {

inline constexpr Length kFarthestLength = mm(1000);

/// A length of a kind of edit.
inline EditMeasure editLength(std::string_view key, Worded title, Worded hint,
                              std::string_view standard, Length least,
                              Length most = kFarthestLength) {
  return {key, title, hint, ParameterKind::Length, standard, least.nm(), most.nm()};
}

inline EditMeasure editCount(std::string_view key, Worded title, Worded hint,
                             std::string_view standard, std::int64_t least, std::int64_t most) {
  return {key, title, hint, ParameterKind::Count, standard, least, most};
}

inline EditMeasure editChoice(std::string_view key, Worded title, Worded hint,
                              std::vector<Worded> choices) {
  const std::string_view first = choices.front();
  const auto last = static_cast<std::int64_t>(choices.size()) - 1;
  return {key, title, hint, ParameterKind::Count, first, 0, last, std::move(choices)};
}

}  // namespace creasewright
