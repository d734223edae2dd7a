#pragma once

#include <utility>
#include <variant>

#include "base/problem.h"

namespace creasewright {

/// A value or the one problem that prevented it. Errors are values here; core does not throw.
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}
  Result(Problem problem) : held_(std::in_place_index<1>, std::move(problem)) {}

  [[nodiscard]] bool ok() const { return held_.index() == 0; }
  explicit operator bool() const { return ok(); }

  /// The value; only when ok().
  [[nodiscard]] const T& value() const& { return std::get<0>(held_); }
  [[nodiscard]] T&& value() && { return std::get<0>(std::move(held_)); }
  const T& operator*() const& { return value(); }
  const T* operator->() const { return &value(); }

  /// The problem; only when not ok().
  [[nodiscard]] const Problem& problem() const { return std::get<1>(held_); }

 private:
  std::variant<T, Problem> held_;
};

}  // namespace creasewright
