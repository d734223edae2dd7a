#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/file_limits.h"
#include "document/limit_problems.h"

namespace creasewright {

/// TextTooLong of the first text, by its field, that is longer than a title.
inline std::optional<Problem> textsProblem(
    std::initializer_list<std::pair<const char*, std::string>> all) {
  for (const auto& [field, text] : all)
    if (auto problem = longestOf(field, text, kLongestTitle)) return problem;
  return std::nullopt;
}

/// What stands against a list: too many items, or the first that `judge` finds something wrong
/// with, its place before the field (`stock/3/name`).
template <class Item, class Judge>
std::optional<Problem> listProblem(const char* list, const std::vector<Item>& items,
                                   std::size_t most, const Judge& judge) {
  if (auto problem = mostOf(list, items.size(), most)) return problem;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (auto problem = inPart(judge(items[i]), std::string(list) + "/" + std::to_string(i + 1)))
      return problem;
  return std::nullopt;
}

}  // namespace creasewright
