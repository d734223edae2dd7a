#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <future>
#include <thread>
#include <vector>

namespace creasewright {

/// Calls `work(i)` once for every i below `count`, on as many threads as the machine has cores, the
/// caller's among them; returns when all are done. Which i runs when is not told, so calls must not
/// depend on one another. What one call throws is thrown again here.
template <class Work>
void inParallel(std::size_t count, const Work& work) {
  std::atomic<std::size_t> next = 0;
  const auto takeAll = [&] {
    for (std::size_t i = next++; i < count; i = next++) work(i);
  };
  const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
  std::vector<std::future<void>> others;
  for (std::size_t i = 1; i < std::min(cores, count); ++i)
    others.push_back(std::async(std::launch::async, takeAll));
  takeAll();
  for (std::future<void>& other : others) other.get();
}

}  // namespace creasewright
