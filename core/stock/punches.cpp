#include "stock/punches.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/limit_problems.h"
#include "stock/csv.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

constexpr std::array<std::string_view, 3> kColumns{"shape", "width", "height"};

constexpr Length kSmallest = mm(3);
constexpr Length kLargest = mm(150);

std::optional<LabelShape> shapeCalled(std::string_view text) {
  const std::vector<Worded> words = shapeWords();
  if (text == "square") return LabelShape::Rectangle;
  for (std::size_t i = 0; i < words.size(); ++i)
    if (std::ranges::equal(std::string_view(words[i]), text, [](unsigned char a, unsigned char b) {
          return std::tolower(a) == std::tolower(b);
        }))
      return static_cast<LabelShape>(i);
  return std::nullopt;
}

/// The fields of a row; the first that cannot be read is `wrong`.
struct PunchRow {
  const CsvTable& table;
  const std::vector<std::string>& row;
  std::optional<std::string> wrong = {};

  [[nodiscard]] std::string text(std::string_view column) const {
    const auto found = std::ranges::find(table.columns, column);
    if (found == table.columns.end()) return {};
    return row[static_cast<std::size_t>(found - table.columns.begin())];
  }
  Length length(std::string_view column, Length standard) {
    const std::string written = text(column);
    if (written.empty() && standard > Length()) return standard;
    const Result<Length> read = parseLength(written, Unit::Millimetre);
    if (read && *read >= kSmallest && *read <= kLargest) return *read;
    if (!wrong) wrong = written;
    return kSmallest;
  }
  Punch punch() {
    Punch punch;
    const std::optional<LabelShape> shape = shapeCalled(text("shape"));
    if (!shape) wrong = text("shape");
    punch.shape = shape.value_or(LabelShape::Circle);
    punch.width = length("width", Length());
    punch.height = length("height", punch.width);
    return punch;
  }
};

}  // namespace

Result<std::vector<Punch>> readPunchTable(std::string_view csv, std::string_view where) {
  const Result<CsvTable> table = readCsv(csv, where, kColumns);
  if (!table) return table.problem();
  if (const auto problem = mostOf("rows", table->rows.size(), kMostSupplies)) return *problem;
  std::vector<Punch> punches;
  for (std::size_t i = 0; i < table->rows.size(); ++i) {
    PunchRow row{*table, table->rows[i]};
    punches.push_back(row.punch());
    if (row.wrong)
      return Problem{ProblemCode::TableUnreadable,
                     std::string(where),
                     {static_cast<std::int64_t>(i + 2), excerpt(*row.wrong)}};
    if (isRound(punches.back().shape) && punches.back().width != punches.back().height)
      return Problem{ProblemCode::PunchNotRound,
                     std::string(where),
                     {static_cast<std::int64_t>(i + 2), punchShapeName(punches.back().shape),
                      row.text("width"), row.text("height")}};
  }
  return punches;
}

std::string punchShapeName(LabelShape shape) {
  std::string name(std::string_view(shapeWords().at(static_cast<std::size_t>(shape))));
  std::ranges::transform(name, name.begin(),
                         [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return name;
}

std::string writePunchTable(const std::vector<Punch>& punches) {
  CsvTable table{{kColumns.begin(), kColumns.end()}, {}};
  for (const Punch& punch : punches)
    table.rows.push_back(
        {punchShapeName(punch.shape), exactText(punch.width), exactText(punch.height)});
  return writeCsv(table);
}

}  // namespace creasewright
