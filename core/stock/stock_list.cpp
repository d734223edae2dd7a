#include "stock/stock_list.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <span>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/limit_problems.h"
#include "fit/basis.h"
#include "fit/card.h"
#include "fit/card_colours.h"
#include "stock/csv.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

constexpr std::string_view kDots = "adhesive-dots";
constexpr std::string_view kOldDots = "glue-dots";  // as tables and kits before version 4 say
constexpr std::array<std::string_view, 5> kKinds{"tape", "ribbon", kDots, "glue", "foam-dots"};

constexpr std::array<std::string_view, 15> kSheetColumns{
    "code",   "name",  "card",  "grammage", "basis",   "caliper", "sides", "width",
    "height", "price", "grain", "pattern",  "at_hand", "limit",   "colour"};
constexpr std::array<std::string_view, 8> kSupplyColumns{"code",   "name",   "kind",  "width",
                                                         "length", "pieces", "price", "at_hand"};

/// With a point or a comma, from 0 to `most`.
std::optional<double> decimalFrom(std::string_view text, double most) {
  std::string written(text);
  std::ranges::replace(written, ',', '.');
  double value = 0;
  const char* end = written.data() + written.size();
  const auto result = std::from_chars(written.data(), end, value, std::chars_format::fixed);
  if (result.ec != std::errc() || result.ptr != end || !(value >= 0 && value <= most))
    return std::nullopt;
  return value;
}

/// The fields of one row by column name. The first that cannot be read is remembered.
class Row {
 public:
  Row(const CsvTable& table, std::size_t index) : table_(table), row_(table.rows[index]) {}

  [[nodiscard]] std::string text(std::string_view column) const {
    const auto found = std::ranges::find(table_.columns, column);
    if (found == table_.columns.end()) return {};
    return row_[static_cast<std::size_t>(found - table_.columns.begin())];
  }

  Length length(std::string_view column, bool needed) {
    const std::string written = text(column);
    if (written.empty() && !needed) return {};
    const Result<Length> read = parseLength(written, Unit::Millimetre);
    if (!read || *read <= Length()) return fail(written), Length();
    return *read;
  }

  /// Of a roll: also in metres (`25 m`) and yards (`27 yd`).
  Length roll(std::string_view column, bool needed) {
    const std::string written = text(column);
    if (written.empty() && !needed) return {};
    const Result<Length> read = parseRoll(written, Unit::Millimetre);
    if (!read || *read <= Length()) return fail(written), Length();
    return *read;
  }

  std::int64_t price() {
    const std::string written = text("price");
    if (written.empty()) return 0;
    const std::optional<std::int64_t> read = readPrice(written);
    if (!read) fail(written);
    return read.value_or(0);
  }

  /// An empty field is 0.
  double decimal(std::string_view column, double most) {
    const std::string written = text(column);
    if (written.empty()) return 0;
    const std::optional<double> value = decimalFrom(written, most);
    if (!value) fail(written);
    return value.value_or(0);
  }

  std::int64_t whole(std::string_view column, std::int64_t standard) {
    const std::string written = text(column);
    if (written.empty()) return standard;
    std::int64_t value = 0;
    const char* end = written.data() + written.size();
    const auto result = std::from_chars(written.data(), end, value);
    if (result.ec != std::errc() || result.ptr != end || value < 0 || value > kMostCounted)
      return fail(written), standard;
    return value;
  }

  /// Index of the word among `words`; an empty field is `standard`.
  std::size_t word(std::string_view column, std::span<const std::string_view> words,
                   std::size_t standard) {
    const std::string written = text(column);
    if (written.empty() && standard < words.size()) return standard;
    const auto found = std::ranges::find(words, std::string_view(written));
    if (found == words.end()) return fail(written), std::size_t{0};
    return static_cast<std::size_t>(found - words.begin());
  }

  CardColours colours() {
    const std::string written = text("colour");
    if (written.empty()) return {};
    const Result<CardColours> read = parseCardColours(written);
    if (!read && !wrongColour_) wrongColour_ = read.problem();
    return read ? *read : CardColours{};
  }

  SupplyItemKind kind() {
    const std::string written = text("kind");
    const std::optional<SupplyItemKind> known = supplyKind(written);
    if (!known) fail(written);
    return known.value_or(SupplyItemKind::Tape);
  }

  void fail(const std::string& written) {
    if (!wrong_) wrong_ = written;
  }
  /// What is wrong with the row, which is the `number`th of the file `where`.
  [[nodiscard]] std::optional<Problem> problem(std::string_view where, std::int64_t number) const {
    if (wrong_)
      return Problem{ProblemCode::TableUnreadable, std::string(where), {number, excerpt(*wrong_)}};
    if (!wrongColour_) return std::nullopt;
    Problem problem{ProblemCode::RowColour, std::string(where), {number}};
    problem.values.insert(problem.values.end(), wrongColour_->values.begin(),
                          wrongColour_->values.end());
    return problem;
  }

 private:
  const CsvTable& table_;
  const std::vector<std::string>& row_;
  std::optional<std::string> wrong_;
  std::optional<Problem> wrongColour_;
};

template <class Item, class Read>
Result<std::vector<Item>> readRows(std::string_view csv, std::string_view where, std::size_t most,
                                   std::span<const std::string_view> columns, const Read& read) {
  const Result<CsvTable> table = readCsv(csv, where, columns);
  if (!table) return table.problem();
  if (const auto problem = mostOf("rows", table->rows.size(), most)) return *problem;
  std::vector<Item> items;
  for (std::size_t i = 0; i < table->rows.size(); ++i) {
    Row row(*table, i);
    items.push_back(read(row));
    if (auto problem = row.problem(where, static_cast<std::int64_t>(i + 2))) return *problem;
  }
  if (const auto problem = fileLimitProblem(items)) return *problem;
  return items;
}

/// What a sheet's card is like. A card that is told by its thickness alone is called as the sheet.
void readCardColumns(Row& row, StockSheet& sheet) {
  constexpr std::array<std::string_view, 3> kSides{"", "1", "2"};
  sheet.card = row.text("card");
  sheet.basis = row.text("basis");
  sheet.grammage = row.decimal("grammage", kHeaviestCard);
  if (!sheet.basis.empty()) {
    const std::optional<double> weight = basisGrammage(sheet.basis);
    if (!weight) row.fail(sheet.basis);
    if (weight && sheet.grammage == 0) sheet.grammage = std::round(*weight);
  }
  sheet.caliper = row.length("caliper", false);
  if (sheet.caliper > kThickestCard) row.fail(row.text("caliper"));
  sheet.oneSided = row.word("sides", kSides, 0) == 1;
  if (sheet.card.empty() && (sheet.caliper > Length() || sheet.grammage > 0))
    sheet.card = sheet.name;
}

StockSheet sheetIn(Row& row) {
  constexpr std::array<std::string_view, 3> kGrains{"", "long", "short"};
  StockSheet sheet;
  sheet.code = row.text("code");
  sheet.name = row.text("name");
  if (sheet.name.empty()) row.fail(sheet.name);
  readCardColumns(row, sheet);
  sheet.width = row.length("width", true);
  sheet.height = row.length("height", true);
  sheet.price = row.price();
  sheet.grain = static_cast<Grain>(row.word("grain", kGrains, 0));
  sheet.pattern = row.whole("pattern", 0) != 0;
  sheet.colours = row.colours();
  sheet.owned = static_cast<int>(row.whole("at_hand", 0));
  if (row.whole("limit", 0) != 0) sheet.atHand = sheet.owned;
  return sheet;
}

SupplyItem supplyIn(Row& row) {
  SupplyItem item;
  item.code = row.text("code");
  item.name = row.text("name");
  if (item.name.empty()) row.fail(item.name);
  item.kind = row.kind();
  const bool rolled = item.kind == SupplyItemKind::Tape || item.kind == SupplyItemKind::Ribbon;
  item.width = row.length("width", rolled);
  item.length = row.roll("length", rolled);
  item.pieces = row.whole("pieces", 0);
  item.price = row.price();
  item.atHand = static_cast<int>(row.whole("at_hand", 0));
  return item;
}

std::string lengthField(Length length) {
  return length == Length() ? std::string() : exactText(length);
}

std::string rollField(Length length) {
  return length == Length() ? std::string() : rollText(length);
}

std::string numberField(double number) {
  if (number == 0) return {};
  std::array<char, 32> digits{};
  const auto end =
      std::to_chars(digits.data(), digits.data() + digits.size(), number, std::chars_format::fixed);
  return {digits.data(), end.ptr};
}

std::string countField(std::int64_t count) { return count == 0 ? "" : std::to_string(count); }

std::string priceField(std::int64_t price) { return price == 0 ? "" : priceText(price); }

std::string colourField(const CardColours& colours) {
  return colours == CardColours() ? std::string() : cardColourText(colours);
}

template <class Item, class Same>
int addWhereMissing(const std::vector<Item>& more, std::vector<Item>& list, const Same& same) {
  int added = 0;
  for (const Item& item : more) {
    if (std::ranges::any_of(list, [&](const Item& other) { return same(item, other); })) continue;
    list.push_back(item);
    ++added;
  }
  return added;
}

}  // namespace

Result<std::vector<StockSheet>> readStockTable(std::string_view csv, std::string_view where) {
  return readRows<StockSheet>(csv, where, kMostSheets, kSheetColumns, sheetIn);
}

Result<std::vector<SupplyItem>> readSupplyTable(std::string_view csv, std::string_view where) {
  return readRows<SupplyItem>(csv, where, kMostSupplies, kSupplyColumns, supplyIn);
}

std::string writeStockTable(const std::vector<StockSheet>& stock) {
  constexpr std::array kGrains{"", "long", "short"};
  CsvTable table{{kSheetColumns.begin(), kSheetColumns.end()}, {}};
  for (const StockSheet& s : stock)
    table.rows.push_back(
        {s.code, s.name, s.card, numberField(s.grammage), s.basis, lengthField(s.caliper),
         s.oneSided ? "1" : "", lengthField(s.width), lengthField(s.height), priceField(s.price),
         kGrains.at(static_cast<std::size_t>(s.grain)), countField(s.pattern ? 1 : 0),
         countField(s.owned), countField(s.atHand >= 0 ? 1 : 0), colourField(s.colours)});
  return writeCsv(table);
}

std::string writeSupplyTable(const std::vector<SupplyItem>& supplies) {
  CsvTable table{{kSupplyColumns.begin(), kSupplyColumns.end()}, {}};
  for (const SupplyItem& s : supplies)
    table.rows.push_back({s.code, s.name, std::string(supplyKindText(s.kind)), lengthField(s.width),
                          rollField(s.length), countField(s.pieces), priceField(s.price),
                          countField(s.atHand)});
  return writeCsv(table);
}

std::optional<SupplyItemKind> supplyKind(std::string_view text) {
  const auto found = std::ranges::find(kKinds, text == kOldDots ? kDots : text);
  if (found == kKinds.end()) return std::nullopt;
  return static_cast<SupplyItemKind>(found - kKinds.begin());
}

std::string_view supplyKindText(SupplyItemKind kind) {
  return kKinds.at(static_cast<std::size_t>(kind));
}

std::optional<std::int64_t> readPrice(std::string_view text) {
  const std::optional<double> value = decimalFrom(text, kDearest / 100.0);
  if (!value) return std::nullopt;
  return std::llround(*value * 100);
}

std::string priceText(std::int64_t price) {
  const std::string cents = std::to_string(price % 100);
  return std::to_string(price / 100) + "." + (cents.size() < 2 ? "0" : "") + cents;
}

int addMissing(const std::vector<StockSheet>& more, std::vector<StockSheet>& list) {
  return addWhereMissing(
      more, list,
      [](const StockSheet& a, const StockSheet& b) {
        return a.name == b.name && a.card == b.card && a.width == b.width && a.height == b.height &&
               a.colours == b.colours;
      });
}

int addMissing(const std::vector<SupplyItem>& more, std::vector<SupplyItem>& list) {
  return addWhereMissing(
      more, list,
      [](const SupplyItem& a, const SupplyItem& b) {
        return a.name == b.name && a.kind == b.kind && a.width == b.width;
      });
}

}  // namespace creasewright
