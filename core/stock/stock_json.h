#pragma once

#include <optional>

#include <nlohmann/json.hpp>

#include "document/json_fields.h"
#include "stock/stock_list.h"

namespace creasewright {

// Sheets and supplies as kit files hold them; lengths as exact texts, fields left out where they
// say nothing.

nlohmann::ordered_json stockJson(const StockSheet& sheet);
nlohmann::ordered_json supplyJson(const SupplyItem& item);

/// Errors: FieldMissing, FieldUnreadable, TakersWrong for a count out of its range.
Result<StockSheet> readStock(const Fields& fields);
Result<SupplyItem> readSupply(const Fields& fields);

/// Reads an array of at most `most` objects into `items`. Errors: FieldMissing, FieldUnreadable,
/// TooMany and those of `read`.
template <class Item>
std::optional<Problem> readAll(const Fields& fields, std::string_view key, std::size_t most,
                               Result<Item> (*read)(const Fields&), std::vector<Item>& items) {
  const Result<std::vector<Fields>> all = fields.objects(key, most);
  if (!all) return all.problem();
  for (const Fields& each : *all) {
    Result<Item> item = read(each);
    if (!item) return item.problem();
    items.push_back(std::move(item).value());
  }
  return std::nullopt;
}

/// A whole number from `least` to `most`. Errors: FieldMissing, FieldUnreadable, TakersWrong.
Result<int> countIn(const Fields& fields, std::string_view key, std::int64_t least,
                    std::int64_t most);

}  // namespace creasewright
