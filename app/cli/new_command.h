#pragma once

#include <string>
#include <vector>

#include "cli/choices.h"

namespace creasewright {

/// What `new` was asked for; an empty text means the argument was not given.
struct NewOptions {
  std::string style;
  ChoiceOptions choices;
  std::vector<std::string> settings;  ///< KEY=VALUE, in order
  std::vector<std::string> extras;    ///< KIND:KEY=VALUE,…
  std::string title;
  std::string output;
};

/// Writes a new design. Nothing is written when an argument cannot be read or a limit is violated.
int runNew(const NewOptions& options);

}  // namespace creasewright
