#pragma once

#include <memory>
#include <vector>

#include "cutting/work.h"

namespace creasewright {

/// A linear programme in columns: minimise cost within the limits of rows and columns.
struct Programme {
  std::vector<int> starts{0};
  std::vector<int> rows;
  std::vector<double> values;
  std::vector<double> low, high, cost;  ///< by column
  std::vector<double> rowLow, rowHigh;

  static constexpr double kInfinite = 1e30;

  /// Puts an end to the column whose values were put.
  void addColumn(double columnCost, double most) {
    cost.push_back(columnCost);
    low.push_back(0);
    high.push_back(most);
    starts.push_back(static_cast<int>(rows.size()));
  }
  void put(int row, double value) {
    rows.push_back(row);
    values.push_back(value);
  }
  void addRow(double least, double most) {
    rowLow.push_back(least);
    rowHigh.push_back(most);
  }
  [[nodiscard]] int columns() const { return static_cast<int>(cost.size()); }
  [[nodiscard]] int rowCount() const { return static_cast<int>(rowLow.size()); }
};

/// Solves a programme, and again after columns were added, from where it was (Clp). Counts its
/// pivots as work and gives up within one of them.
class LinearSolver {
 public:
  explicit LinearSolver(const Programme& programme);
  LinearSolver(LinearSolver&&) noexcept;
  LinearSolver& operator=(LinearSolver&&) noexcept;
  ~LinearSolver();

  void addColumns(const Programme& more);  ///< its columns only
  void setRowHigh(int row, double most);
  void setRowLow(int row, double least);
  void setColumn(int column, double least, double most);
  /// False when it was given up: then nothing below is to be used.
  bool solve(Work& work);
  [[nodiscard]] double cost() const;
  [[nodiscard]] std::vector<double> times() const;   ///< by column
  [[nodiscard]] std::vector<double> prices() const;  ///< by row

 private:
  struct Model;
  std::unique_ptr<Model> model_;
};

/// A solution in whole numbers.
struct WholeSolution {
  std::vector<double> times;  ///< by column; empty = none found
  bool best = false;          ///< the solver says that none is better
  bool none = false;          ///< the solver says that there is none
};

/// Solves a programme in whole numbers (Cbc) within so many steps of work, counted by pivots and
/// nodes. Whoever uses a solution judges it.
WholeSolution solveInWholes(const Programme& programme, Work& work, double steps);

}  // namespace creasewright
