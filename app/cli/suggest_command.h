#pragma once

#include <string>
#include <vector>

#include "cli/choices.h"

namespace creasewright {

/// What `styles --for` was given.
struct SuggestOptions {
  ChoiceOptions choices;
  std::vector<std::string> sheets;  ///< ids; empty: letter, A4 and 12 x 12 in
};

/// Prints every style made for the product, the most suitable first; `json` as DEVELOPERS.md
/// describes it.
int runSuggest(const SuggestOptions& options, bool json);

}  // namespace creasewright
