#include "cutting/cover.h"

#include <cmath>
#include <memory>
#include <string>

#include <coin/Cbc_C_Interface.h>
#include <coin/Clp_C_Interface.h>

namespace creasewright {
namespace {

constexpr double kInfinite = 1e30;

/// Columns and rows as the solvers take them: one row for each demand, then one for each stock of
/// which there is only so much.
struct Matrix {
  std::vector<int> starts{0};
  std::vector<int> rows;
  std::vector<double> values;
  std::vector<double> low, high, cost;  // by column
  std::vector<double> rowLow, rowHigh;

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

/// The row of each limited stock, -1 for others.
std::vector<int> stockRows(const CoverRows& rows, int first) {
  std::vector<int> row;
  for (const int atHand : rows.atHand) row.push_back(atHand >= 0 ? first++ : -1);
  return row;
}

void putColumn(Matrix& matrix, const CoverColumn& column, const std::vector<int>& stockRow) {
  for (std::size_t d = 0; d < column.pattern.counts.size(); ++d)
    if (column.pattern.counts[d] > 0) matrix.put(static_cast<int>(d), column.pattern.counts[d]);
  const int row = stockRow[static_cast<std::size_t>(column.stock)];
  if (row >= 0) matrix.put(row, 1);
}

/// Only the rows.
Matrix emptyMatrix(const CoverRows& rows) {
  Matrix matrix;
  for (const int demand : rows.demand) matrix.addRow(demand, kInfinite);
  for (const int atHand : rows.atHand)
    if (atHand >= 0) matrix.addRow(-kInfinite, atHand);
  return matrix;
}

Matrix coverMatrix(const std::vector<CoverColumn>& columns, const CoverRows& rows) {
  Matrix matrix = emptyMatrix(rows);
  const std::vector<int> stockRow = stockRows(rows, static_cast<int>(rows.demand.size()));
  for (const CoverColumn& column : columns) {
    putColumn(matrix, column, stockRow);
    matrix.addColumn(static_cast<double>(column.cost), kInfinite);
  }
  return matrix;
}

struct ClpDelete {
  void operator()(Clp_Simplex* model) const { Clp_deleteModel(model); }
};
struct CbcDelete {
  void operator()(Cbc_Model* model) const { Cbc_deleteModel(model); }
};

/// Values by column, empty when nothing was found in time, and whether none are better.
struct IntegerSolution {
  std::vector<double> values;
  bool best = false;
};

/// Solves a matrix in whole numbers.
IntegerSolution solveInteger(const Matrix& m, double seconds) {
  const std::unique_ptr<Cbc_Model, CbcDelete> model(Cbc_newModel());
  Cbc_setParameter(model.get(), "log", "0");
  Cbc_loadProblem(model.get(), m.columns(), m.rowCount(), m.starts.data(), m.rows.data(),
                  m.values.data(), m.low.data(), m.high.data(), m.cost.data(), m.rowLow.data(),
                  m.rowHigh.data());
  for (int i = 0; i < m.columns(); ++i) Cbc_setInteger(model.get(), i);
  Cbc_setParameter(model.get(), "seconds", std::to_string(seconds).c_str());
  Cbc_solve(model.get());
  const double* found = Cbc_getColSolution(model.get());
  if (found == nullptr || Cbc_isProvenInfeasible(model.get()) != 0 ||
      Cbc_getObjValue(model.get()) > 1e29)
    return {};
  return {{found, found + m.columns()}, Cbc_isProvenOptimal(model.get()) != 0};
}

bool covers(const std::vector<CoverColumn>& columns, const CoverRows& rows,
            const std::vector<int>& times) {
  std::vector<int> have(rows.demand.size(), 0);
  std::vector<int> used(rows.atHand.size(), 0);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    used[static_cast<std::size_t>(columns[i].stock)] += times[i];
    for (std::size_t d = 0; d < have.size(); ++d)
      have[d] += times[i] * columns[i].pattern.counts[d];
  }
  for (std::size_t d = 0; d < have.size(); ++d)
    if (have[d] < rows.demand[d]) return false;
  for (std::size_t s = 0; s < used.size(); ++s)
    if (rows.atHand[s] >= 0 && used[s] > rows.atHand[s]) return false;
  return true;
}

WholeCover wholeCover(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                      const IntegerSolution& solution) {
  const std::vector<double>& found = solution.values;
  WholeCover whole;
  whole.best = solution.best;
  if (found.size() < columns.size()) return whole;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    whole.times.push_back(static_cast<int>(std::lround(found[i])));
    whole.cost += whole.times.back() * columns[i].cost;
  }
  whole.found = covers(columns, rows, whole.times);
  return whole;
}

}  // namespace

LinearCover solveLinear(const std::vector<CoverColumn>& columns, const CoverRows& rows) {
  Matrix m = coverMatrix(columns, rows);
  double dear = 1;
  for (const CoverColumn& column : columns) dear += static_cast<double>(column.cost);
  const double missing = 1e3 * dear;  // for a blank that no sheet at hand gives
  for (std::size_t d = 0; d < rows.demand.size(); ++d) {
    m.put(static_cast<int>(d), 1);
    m.addColumn(missing, kInfinite);
  }
  const std::unique_ptr<Clp_Simplex, ClpDelete> model(Clp_newModel());
  Clp_setLogLevel(model.get(), 0);
  Clp_loadProblem(model.get(), m.columns(), m.rowCount(), m.starts.data(), m.rows.data(),
                  m.values.data(), m.low.data(), m.high.data(), m.cost.data(), m.rowLow.data(),
                  m.rowHigh.data());
  Clp_dual(model.get(), 0);
  LinearCover cover;
  cover.cost = Clp_objectiveValue(model.get());
  const double* times = Clp_primalColumnSolution(model.get());
  const double* worth = Clp_dualRowSolution(model.get());
  cover.times.assign(times, times + columns.size());
  cover.blankWorth.assign(worth, worth + rows.demand.size());
  std::size_t row = rows.demand.size();
  for (const int atHand : rows.atHand) cover.sheetWorth.push_back(atHand >= 0 ? worth[row++] : 0);
  for (std::size_t d = 0; d < rows.demand.size(); ++d)
    cover.covered = cover.covered && times[columns.size() + d] < 1e-6;
  return cover;
}

WholeCover solveWhole(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                      double seconds) {
  return wholeCover(columns, rows, solveInteger(coverMatrix(columns, rows), seconds));
}

WholeCover fewestColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         std::int64_t cost, double seconds) {
  Matrix base = emptyMatrix(rows);
  const std::vector<int> stockRow = stockRows(rows, static_cast<int>(rows.demand.size()));
  const int costRow = base.rowCount();
  base.addRow(-kInfinite, static_cast<double>(cost));
  const int firstLink = base.rowCount();
  for (std::size_t i = 0; i < columns.size(); ++i) base.addRow(-kInfinite, 0);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    putColumn(base, columns[i], stockRow);
    base.put(costRow, static_cast<double>(columns[i].cost));
    base.put(firstLink + static_cast<int>(i), 1);
    base.addColumn(0, kInfinite);
  }
  for (std::size_t i = 0; i < columns.size(); ++i) {
    int most = 0;  // sheets of this column that can be of use
    for (std::size_t d = 0; d < rows.demand.size(); ++d)
      if (columns[i].pattern.counts[d] > 0)
        most = std::max(most, (rows.demand[d] + columns[i].pattern.counts[d] - 1) /
                                  columns[i].pattern.counts[d]);
    base.put(firstLink + static_cast<int>(i), -most);
    base.addColumn(1, 1);
  }
  return wholeCover(columns, rows, solveInteger(base, seconds));
}

}  // namespace creasewright
