#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "stock/punches.h"
#include "stock/stock_list.h"

namespace creasewright {

/// The person's own tables of sheets, supplies and punches, as CSV in the program's data folder;
/// before anything was saved, the tables that come with the program, and no punches.
QByteArray stockCsv();
QByteArray supplyCsv();
QByteArray punchCsv();

/// Saves a table after it could be read. One on disk that has become unreadable is kept aside, as
/// `sheets-unreadable-1.csv`. Errors: those of readStockTable, FileNotWritten.
std::optional<Problem> saveStockCsv(const QByteArray& csv);
std::optional<Problem> saveSupplyCsv(const QByteArray& csv);
std::optional<Problem> savePunchCsv(const QByteArray& csv);

/// Puts what is missing at the end of the person's lists. A list on disk that has become unreadable
/// is left as it is. Errors: those of readStockTable, FileNotWritten.
std::optional<Problem> addToOwnLists(const std::vector<StockSheet>& stock,
                                     const std::vector<SupplyItem>& supplies);

/// What is wrong with a list that has become unreadable.
std::optional<Problem> ownListProblem();

/// The punches that the person owns: `punches.csv` beside the other tables, empty without one.
/// Errors: those of readPunchTable.
Result<std::vector<Punch>> ownPunches();

/// What the tables hold; empty when one on disk has become unreadable.
std::vector<StockSheet> ownStock();
std::vector<SupplyItem> ownSupplies();

}  // namespace creasewright
