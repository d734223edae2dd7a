#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "cutting/programme.h"
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

/// The linear programme over columns that grow in number (Clp).
class CoverMaster {
 public:
  explicit CoverMaster(const CoverRows& rows);

  /// Takes the columns that it does not have yet, then solves; nothing when that was given up.
  std::optional<LinearCover> solve(const std::vector<CoverColumn>& columns, Work& work);

 private:
  CoverRows rows_;
  double missing_;  // cost of a blank that no sheet at hand gives
  std::size_t taken_ = 0;
  std::optional<LinearSolver> solver_;
};

struct WholeCover {
  bool found = false;
  std::int64_t cost = 0;
  std::vector<int> times;  ///< by column
  bool best = false;       ///< the solver says: no whole cover over the columns costs less
  bool none = false;       ///< the solver says: the columns have no whole cover
};

/// Whether columns taken so often give all blanks from no more sheets than there are.
bool covers(const std::vector<CoverColumn>& columns, const CoverRows& rows,
            const std::vector<int>& times);

/// Whole sheets at least cost over the columns (Cbc), within so many steps of work.
WholeCover solveWhole(const std::vector<CoverColumn>& columns, const CoverRows& rows, Work& work,
                      double steps);

/// Among covers of `cost` one of fewest different columns; nothing found leaves `found` false.
WholeCover fewestColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         std::int64_t cost, Work& work, double steps);

}  // namespace creasewright
