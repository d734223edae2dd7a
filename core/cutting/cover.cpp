#include "cutting/cover.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kInfinite = Programme::kInfinite;

/// The row of each limited stock, -1 for others.
std::vector<int> stockRows(const CoverRows& rows, int first) {
  std::vector<int> row;
  for (const int atHand : rows.atHand) row.push_back(atHand >= 0 ? first++ : -1);
  return row;
}

void putColumn(Programme& programme, const CoverColumn& column, const std::vector<int>& stockRow) {
  for (std::size_t d = 0; d < column.pattern.counts.size(); ++d)
    if (column.pattern.counts[d] > 0) programme.put(static_cast<int>(d), column.pattern.counts[d]);
  const int row = stockRow[static_cast<std::size_t>(column.stock)];
  if (row >= 0) programme.put(row, 1);
}

/// Only the rows.
Programme onlyRows(const CoverRows& rows) {
  Programme programme;
  for (const int demand : rows.demand) programme.addRow(demand, kInfinite);
  for (const int atHand : rows.atHand)
    if (atHand >= 0) programme.addRow(-kInfinite, atHand);
  return programme;
}

Programme coverProgramme(const std::vector<CoverColumn>& columns, const CoverRows& rows) {
  Programme programme = onlyRows(rows);
  const std::vector<int> stockRow = stockRows(rows, static_cast<int>(rows.demand.size()));
  for (const CoverColumn& column : columns) {
    putColumn(programme, column, stockRow);
    programme.addColumn(static_cast<double>(column.cost), kInfinite);
  }
  return programme;
}

WholeCover wholeCover(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                      const WholeSolution& solution) {
  WholeCover whole;
  whole.best = solution.best;
  whole.none = solution.none;
  if (solution.times.size() < columns.size()) return whole;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    whole.times.push_back(static_cast<int>(std::lround(solution.times[i])));
    whole.cost += whole.times.back() * columns[i].cost;
  }
  whole.found = covers(columns, rows, whole.times);
  return whole;
}

}  // namespace

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

CoverMaster::CoverMaster(const CoverRows& rows) : rows_(rows), missing_(0) {}

std::optional<LinearCover> CoverMaster::solve(const std::vector<CoverColumn>& columns, Work& work) {
  const std::vector<int> stockRow = stockRows(rows_, static_cast<int>(rows_.demand.size()));
  Programme more;
  if (!solver_) {
    std::int64_t dearest = 1;
    for (const CoverColumn& column : columns) dearest = std::max(dearest, column.cost);
    missing_ = 1e6 * static_cast<double>(dearest);
    more = onlyRows(rows_);
    for (std::size_t d = 0; d < rows_.demand.size(); ++d) {
      more.put(static_cast<int>(d), 1);
      more.addColumn(missing_, kInfinite);
    }
  }
  for (; taken_ < columns.size(); ++taken_) {
    putColumn(more, columns[taken_], stockRow);
    more.addColumn(static_cast<double>(columns[taken_].cost), kInfinite);
  }
  if (!solver_)
    solver_.emplace(more);
  else if (more.columns() > 0)
    solver_->addColumns(more);
  if (!solver_->solve(work)) return std::nullopt;
  const std::vector<double> times = solver_->times();
  const std::vector<double> worth = solver_->prices();
  const auto blanks = static_cast<std::ptrdiff_t>(rows_.demand.size());
  LinearCover cover;
  cover.cost = solver_->cost();
  cover.times.assign(times.begin() + blanks, times.end());
  cover.blankWorth.assign(worth.begin(), worth.begin() + blanks);
  auto row = static_cast<std::size_t>(blanks);
  for (const int atHand : rows_.atHand) cover.sheetWorth.push_back(atHand >= 0 ? worth[row++] : 0);
  cover.covered =
      std::all_of(times.begin(), times.begin() + blanks, [](double t) { return t < 1e-6; });
  return cover;
}

WholeCover solveWhole(const std::vector<CoverColumn>& columns, const CoverRows& rows, Work& work,
                      double steps) {
  return wholeCover(columns, rows, solveInWholes(coverProgramme(columns, rows), work, steps));
}

WholeCover fewestColumns(const std::vector<CoverColumn>& columns, const CoverRows& rows,
                         std::int64_t cost, Work& work, double steps) {
  Programme base = onlyRows(rows);
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
  return wholeCover(columns, rows, solveInWholes(base, work, steps));
}

}  // namespace creasewright
