#pragma once

#include <cstdint>
#include <vector>

namespace creasewright {

/// A kind of sheet, and the most that blanks of given worths can be worth on one.
struct SheetValue {
  std::int64_t cost = 1;
  int atHand = -1;  ///< -1 = any number
  double most = 0;
};

/// What no plan costs less than, when the blanks that are asked for are worth `demanded` together:
/// worths divided by their dearest sheet are a feasible point of the dual programme (Farley, Oper.
/// Res. 38, 1990); of a kind of which only so many are at hand, each may be worth more than it
/// costs, for that much (own derivation: weak duality with the limits' rows). Right for any worths
/// that are not negative, as long as each `most` is no less than the true one. Endless when the
/// sheets at hand cannot hold the blanks.
struct CostBound {
  double cost = 0;
  double share = 0;  ///< what the worths are multiplied by to be prices
};
CostBound costBound(double demanded, const std::vector<SheetValue>& sheets);

}  // namespace creasewright
