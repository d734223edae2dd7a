#pragma once

#include <string>
#include <vector>

#include "cli/choices.h"

namespace creasewright {

/// What may be written after `style`; an empty text means that the argument was not given.
struct StyleOptions {
  std::vector<std::string> words;  ///< what to do, then files
  std::string name;
  std::string note;
  std::string suits;               ///< AxBxC..DxExF
  std::string see;                 ///< KEY,KEY
  std::vector<std::string> rules;  ///< KEY=FORMULA
  std::string again;
  std::string output;
  std::vector<std::string> products;
  ChoiceOptions choices;
  bool json = false;

  /// What comes after what to do.
  [[nodiscard]] std::vector<std::string> files() const {
    return words.empty() ? words : std::vector<std::string>(words.begin() + 1, words.end());
  }
};

// One for each thing to do; each returns the exit code.
int keepStyles(const StyleOptions& options);
int openStyle(const StyleOptions& options);
int listStyles(const StyleOptions& options);
int checkStyle(const StyleOptions& options);

}  // namespace creasewright
