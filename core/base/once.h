#pragma once

#include <memory>
#include <mutex>
#include <optional>
#include <utility>

namespace creasewright {

/// A value that takes long to find: found when it is first asked for, and then known to all copies.
/// What it follows from must not change afterwards. May be asked from any thread.
template <class T>
class Once {
 public:
  /// `find()`, called at most once.
  template <class Find>
  const T& get(Find&& find) const {
    std::call_once(state_->flag, [&] { state_->value = std::forward<Find>(find)(); });
    return *state_->value;
  }

 private:
  struct State {
    std::once_flag flag;
    std::optional<T> value;
  };
  std::shared_ptr<State> state_ = std::make_shared<State>();
};

}  // namespace creasewright
