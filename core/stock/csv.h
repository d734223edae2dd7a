#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"

namespace creasewright {

/// A field with an apostrophe before what a spreadsheet would take for a formula (`=`, `+`, `-`,
/// `@`, a tab, a return). readCsv takes it off again.
std::string guardedField(std::string_view field);

/// A table read from comma-separated values (RFC 4180; a semicolon or a tab may part the fields
/// instead), its first row the column names in small letters.
struct CsvTable {
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;  ///< each as long as `columns`
};

/// `where` names the file in problems. Errors: TableUnreadable (a quote that does not end, a row of
/// another length, no columns), TableNoText (a zero byte), FileTooLarge.
Result<CsvTable> readCsv(std::string_view text, std::string_view where);

/// A table that has none but these columns. Error besides: ColumnUnknown.
Result<CsvTable> readCsv(std::string_view text, std::string_view where,
                         std::span<const std::string_view> columns);

std::string writeCsv(const CsvTable& table);

}  // namespace creasewright
