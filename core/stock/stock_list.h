#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "stock/stock_sheet.h"

namespace creasewright {

enum class SupplyItemKind { Tape, Ribbon, AdhesiveDots, Glue, FoamDots };

/// What is bought by the pack: a roll of tape or ribbon, a box of adhesive dots, a bottle.
struct SupplyItem {
  std::string code;  ///< the user's own
  std::string name;
  SupplyItemKind kind = SupplyItemKind::Tape;
  Length width;             ///< tape, ribbon; thickness of foam dots
  Length length;            ///< of a roll
  std::int64_t pieces = 0;  ///< adhesive dots in a pack; places a bottle serves
  std::int64_t price = 0;   ///< of a pack, smallest coin; 0 = not told
  int atHand = 0;           ///< packs
  bool operator==(const SupplyItem&) const = default;
};

// Tables as comma-separated values with a row of column names; columns may stand in any order, and
// those that are not there take their standard. Lengths carry a unit (`12 in`, `297 mm`; of rolls
// also `25 m`, `27 yd`), prices are decimals (`0.45`).

/// Columns: `code`, `name`, `card` (id of a listed card or of a person's own; empty = any),
/// `grammage` (g/m2), `basis` (`65 lb cover`), `caliper`, `sides` (1 or 2), `width`, `height`,
/// `price`, `grain` (`long`, `short`, empty), `pattern` (1 where it has a direction), `at_hand`,
/// `limit` (1 where no more can be had than is at hand), `colour` (`sage`, `sage/cream` for a back
/// of another one, `#9AAF90`; empty or `plain` = serves any). A sheet with a weight or a caliper
/// but no card is one of its own, called as the sheet. Errors: TableUnreadable, TableNoText,
/// ColumnUnknown, RowColour, FileTooLarge, and those of fileLimitProblem.
Result<std::vector<StockSheet>> readStockTable(std::string_view csv, std::string_view where);
std::string writeStockTable(const std::vector<StockSheet>& stock);

/// Columns: `code`, `name`, `kind` (`tape`, `ribbon`, `adhesive-dots`, `glue`, `foam-dots`),
/// `width`, `length`, `pieces`, `price`, `at_hand`. Errors: as of readStockTable.
Result<std::vector<SupplyItem>> readSupplyTable(std::string_view csv, std::string_view where);
std::string writeSupplyTable(const std::vector<SupplyItem>& supplies);

/// What no file of ours holds: too many, a text too long, a roll too long, a number too large.
/// Errors: TooMany, TextTooLong, RollTooLong, TakersWrong.
std::optional<Problem> fileLimitProblem(const std::vector<StockSheet>& stock);
std::optional<Problem> fileLimitProblem(const std::vector<SupplyItem>& supplies);

/// `tape`, `ribbon`, `adhesive-dots` (in older tables and kits `glue-dots`), `glue`, `foam-dots`;
/// nothing for another word.
std::optional<SupplyItemKind> supplyKind(std::string_view text);
std::string_view supplyKindText(SupplyItemKind kind);
/// `12`, `12.50` or `12,5` in the smallest coin; nothing for what is no price, or above kDearest.
std::optional<std::int64_t> readPrice(std::string_view text);
/// Decimals of a price: 45 reads `0.45`.
std::string priceText(std::int64_t price);

/// The sheets of `more` that are not in `list` yet, by name, card, size and colours, put at its
/// end; the same for supplies by name and kind. Returns how many came.
int addMissing(const std::vector<StockSheet>& more, std::vector<StockSheet>& list);
int addMissing(const std::vector<SupplyItem>& more, std::vector<SupplyItem>& list);

}  // namespace creasewright
