#include "stock/csv.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cstdint>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/limit_problems.h"

namespace creasewright {
namespace {

/// A spreadsheet takes what begins so for a formula, or moves it to another cell.
constexpr std::string_view kFormulaStarts = "=+-@\t\r\n";

bool startsFormula(std::string_view field) {
  return !field.empty() && kFormulaStarts.find(field.front()) != std::string_view::npos;
}

/// Whether an apostrophe in front only guards: before what begins a formula, or another of them.
bool guarded(std::string_view field) {
  const std::size_t guards = field.find_first_not_of('\'');
  return guards != 0 && guards != std::string_view::npos && startsFormula(field.substr(guards));
}

/// The separator that the first row uses most.
char separatorOf(std::string_view text) {
  const std::string_view first = text.substr(0, text.find('\n'));
  constexpr std::array kSeparators{',', ';', '\t'};
  return *std::ranges::max_element(kSeparators, {},
                                   [&](char c) { return std::ranges::count(first, c); });
}

/// Rows of fields; nothing when a quote does not end.
class CsvReader {
 public:
  CsvReader(std::string_view text, char separator) : text_(text), separator_(separator) {}

  bool read(std::vector<std::vector<std::string>>& rows) {
    while (at_ < text_.size()) {
      std::vector<std::string> row;
      do {
        std::string field;
        if (!readField(field)) return false;
        if (guarded(field)) field.erase(0, 1);
        row.push_back(std::move(field));
      } while (take(separator_));
      take('\r');
      take('\n');
      const bool empty = row.size() == 1 && row.front().empty();
      if (!empty) rows.push_back(std::move(row));
    }
    return true;
  }

 private:
  bool take(char c) {
    if (at_ >= text_.size() || text_[at_] != c) return false;
    ++at_;
    return true;
  }

  bool readField(std::string& field) {
    if (!take('"')) {
      while (at_ < text_.size() && text_[at_] != separator_ && text_[at_] != '\n' &&
             text_[at_] != '\r')
        field += text_[at_++];
      return true;
    }
    while (at_ < text_.size())
      if (!take('"'))
        field += text_[at_++];
      else if (take('"'))
        field += '"';
      else
        return true;
    return false;
  }

  std::string_view text_;
  char separator_;
  std::size_t at_ = 0;
};

std::string joined(const std::vector<std::string>& row) {
  std::string all;
  for (const std::string& field : row) all += (all.empty() ? "" : ",") + field;
  return all;
}

void writeRow(const std::vector<std::string>& row, std::string& out) {
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (i > 0) out += ',';
    const std::string field = guardedField(row[i]);
    if (field.find_first_of(",;\t\"\r\n") == std::string::npos) {
      out += field;
      continue;
    }
    out += '"';
    for (const char c : field) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    out += '"';
  }
  out += "\r\n";
}

}  // namespace

std::string guardedField(std::string_view field) {
  const bool guard = startsFormula(field) || guarded(field);
  return (guard ? "'" : "") + std::string(field);
}

Result<CsvTable> readCsv(std::string_view text, std::string_view where) {
  const std::string file(where);
  if (const auto problem = largestOf(where, text.size(), kLargestTable)) return *problem;
  if (text.find('\0') != std::string_view::npos) return Problem{ProblemCode::TableNoText, file, {}};
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  std::vector<std::vector<std::string>> rows;
  if (!CsvReader(text, separatorOf(text)).read(rows) || rows.empty())
    return Problem{ProblemCode::TableUnreadable, file, {std::int64_t{1}, excerpt(text)}};
  CsvTable table;
  table.columns = std::move(rows.front());
  for (std::string& name : table.columns)
    std::ranges::transform(name, name.begin(), [](unsigned char c) { return std::tolower(c); });
  for (std::size_t i = 1; i < rows.size(); ++i) {
    if (rows[i].size() != table.columns.size())
      return Problem{ProblemCode::TableUnreadable,
                     file,
                     {static_cast<std::int64_t>(i + 1), excerpt(joined(rows[i]))}};
    table.rows.push_back(std::move(rows[i]));
  }
  return table;
}

Result<CsvTable> readCsv(std::string_view text, std::string_view where,
                         std::span<const std::string_view> columns) {
  Result<CsvTable> table = readCsv(text, where);
  if (!table) return table;
  for (const std::string& column : table->columns) {
    if (std::ranges::find(columns, column) != columns.end()) continue;
    std::string known;
    for (const std::string_view each : columns) (known += known.empty() ? "" : ", ") += each;
    return Problem{ProblemCode::ColumnUnknown, std::string(where), {excerpt(column), known}};
  }
  return table;
}

std::string writeCsv(const CsvTable& table) {
  std::string out;
  writeRow(table.columns, out);
  for (const std::vector<std::string>& row : table.rows) writeRow(row, out);
  return out;
}

}  // namespace creasewright
