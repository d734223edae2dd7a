#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "document/design.h"
#include "stock/stock_list.h"

namespace creasewright {

inline constexpr int kBundleVersion = 4;

/// What one person hands on to another: designs with their cards and tools, and the sheets and
/// supplies they are made from.
struct Bundle {
  std::vector<Design> designs;
  std::vector<StockSheet> stock;
  std::vector<SupplyItem> supplies;
};

/// UTF-8 JSON with whole designs.
std::string writeBundle(const Bundle& bundle);

/// What writeBundle makes, if readBundle takes it back. `where` names the file in problems. Errors:
/// FileTooLarge and those of fileLimitProblem.
Result<std::string> bundleFileText(const Bundle& bundle, std::string_view where);

/// What no bundle holds (base/file_limits.h). Errors: TooMany, TextTooLong, RollTooLong,
/// TakersWrong.
std::optional<Problem> fileLimitProblem(const Bundle& bundle);

/// Reads what writeBundle wrote; version 1 had designs only. `where` names the file in problems.
/// Errors: FileTooLarge, NotABundle, NewerVersion, those of fileLimitProblem and what readDesign,
/// readStock and readSupply tell of the first part that cannot be read; nothing is taken from a
/// broken bundle, and its problem names the part by its place, such as `designs/3/card/caliper`.
Result<Bundle> readBundle(std::string_view text, std::string_view where);
Result<Bundle> readBundleFile(const std::string& path);

}  // namespace creasewright
