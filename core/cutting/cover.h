#pragma once

#include <cstdint>
#include <vector>

#include "cutting/sheet_knapsack.h"

namespace creasewright {

/// A way to cut one kind of stock, as a column of the cover: counts by demand.
struct CoverColumn {
  int stock = 0;
  std::int64_t cost = 1;
  Pattern pattern;
};

/// What must be covered, and what of each stock there is (-1 = any number).
struct CoverRows {
  std::vector<int> demand;
  std::vector<int> atHand;
};

/// Solution of the linear cover: how often each column, and the worth of one more blank of each
/// demand and of one more sheet of each limited stock.
struct LinearCover {
  double cost = 0;
  bool covered = true;  ///< false when the stock at hand does not suffice
  std::vector<double> times;
  std::vector<double> blankWorth;
  std::vector<double> sheetWorth;  ///< not positive
};

/// The linear programme over the columns (Clp).
LinearCover solveLinear(const std::vector<CoverColumn>& columns, const CoverRows& rows);

struct WholeCover {
  bool found = false;
  std::int64_t cost = 0;
  std::vector<int> times;  ///< by column
  bool best = false;       ///< proven: no whole cover over the columns costs less
};

/// Whole sheets at least cost over the columns (Cbc), in at most `seconds`.
WholeCover solveWhole(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                      double seconds);

/// Among covers of `cost` one of fewest different columns; nothing found within `seconds` leaves
/// `found` false.
WholeCover fewestColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         std::int64_t cost, double seconds);

}  // namespace creasewright
