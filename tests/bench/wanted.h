#pragma once

#include <cstdlib>
#include <iostream>
#include <utility>

#include "base/problem_code.h"
#include "base/result.h"

namespace creasewright::bench {

/// Ends the whole run: a time of something else than was meant is no time.
[[noreturn]] inline void unwanted(std::string_view what) {
  std::cerr << "A bench got what it did not want: " << what << std::endl;
  std::exit(1);
}

/// The value, or the end of the run with the problem.
template <class T>
T wanted(Result<T> result) {
  if (!result) {
    const Problem& problem = result.problem();
    unwanted(std::string(codeName(problem.code)) + " at " + problem.where);
  }
  return std::move(result).value();
}

inline void wanted(bool holds, std::string_view what) {
  if (!holds) unwanted(what);
}

}  // namespace creasewright::bench
