#pragma once

#include <cstdint>
#include <string>

namespace creasewright {

/// What a maker charges with. Shares are whole percent, money is in the smallest coin.
struct Pricing {
  std::string currency;         ///< as it is printed behind a price: `EUR`, `$`
  std::int64_t hourlyRate = 0;  ///< of the maker's work
  int overhead = 10;            ///< on material and work: room, tools, waste
  int margin = 30;              ///< of the price, not on top of the cost
  int fee = 0;                  ///< of the price: a market's, a card payment's
  std::int64_t classCosts = 0;  ///< of one class, whoever comes: the teacher's pay, room, travel

  bool operator==(const Pricing&) const = default;
};

inline constexpr int kMostOverhead = 200;
inline constexpr int kMostMargin = 90;
inline constexpr int kMostFee = 50;
inline constexpr std::size_t kLongestCurrency = 8;  // characters

}  // namespace creasewright
