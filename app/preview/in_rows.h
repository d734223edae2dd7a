#pragma once

#include <functional>

namespace creasewright {

/// Calls `work` for all rows from 0 to `count`, in blocks of some, on this thread and on one other
/// that is free; returns when all is done. `work` must bear to be called on two threads at once,
/// each with rows of its own, and must not throw.
void inRows(int count, const std::function<void(int from, int to)>& work);

}  // namespace creasewright
