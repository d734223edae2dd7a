#pragma once

#include <nlohmann/json.hpp>

#include "document/json_fields.h"
#include "kits/stock_list.h"

namespace creasewright {

// Sheets and supplies as kit files hold them; lengths as exact texts, fields left out where they
// say nothing.

nlohmann::ordered_json stockJson(const StockSheet& sheet);
nlohmann::ordered_json supplyJson(const SupplyItem& item);

/// Errors: FieldMissing, FieldUnreadable, TakersWrong for a count out of its range.
Result<StockSheet> readStock(const Fields& fields);
Result<SupplyItem> readSupply(const Fields& fields);

/// A whole number from `least` to `most`. Errors: FieldMissing, FieldUnreadable, TakersWrong.
Result<int> countIn(const Fields& fields, std::string_view key, int least, int most);

}  // namespace creasewright
