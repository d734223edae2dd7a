#pragma once

#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>

namespace creasewright::testing {

/// Random numbers for a test; the seed is printed, and CREASEWRIGHT_SEED sets it for a rerun.
class Random {
 public:
  explicit Random(std::uint64_t standard) : engine_(seed(standard)) {}

  double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1p-53);
  }
  int whole(int low, int high) {  ///< both included
    const std::int64_t span = std::int64_t{high} - low + 1;
    return static_cast<int>(
        low + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(span)));
  }

 private:
  static std::uint64_t seed(std::uint64_t standard) {
    const char* set = std::getenv("CREASEWRIGHT_SEED");
    const std::uint64_t value = set == nullptr ? standard : std::strtoull(set, nullptr, 10);
    std::cout << "seed " << value << " (set CREASEWRIGHT_SEED to change it)\n";
    return value;
  }
  std::mt19937_64 engine_;
};

}  // namespace creasewright::testing
