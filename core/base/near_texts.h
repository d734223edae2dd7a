#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/problem.h"

namespace creasewright {

/// One thing that has several spellings: an id and a name.
struct Spelled {
  std::string_view id;
  std::string_view name;
};

/// The ids of the at most `count` known things whose id or name is most like what was written,
/// nearest first: pairs of neighbouring letters and digits in common (Dice 1945), capitals, blanks
/// and marks not counted. Empty where nothing is like it.
std::vector<std::string> nearTexts(std::string_view written, std::span<const Spelled> known,
                                   std::size_t count);

/// `code` with an excerpt of what was written and up to three ids that are like it.
Problem unknownAmong(ProblemCode code, std::string_view written, std::span<const Spelled> known);

}  // namespace creasewright
