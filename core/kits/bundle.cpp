#include "kits/bundle.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "base/file_limits.h"
#include "document/design_file.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "document/limit_problems.h"
#include "stock/stock_json.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view kBundleFormat = "creasewright-bundle";

/// An array that is not there is empty.
template <class Item>
std::optional<Problem> readAllIfThere(const Fields& fields, std::string_view key, std::size_t most,
                                      Result<Item> (*read)(const Fields&),
                                      std::vector<Item>& items) {
  return fields.has(key) ? readAll(fields, key, most, read, items) : std::nullopt;
}

}  // namespace

std::string writeBundle(const Bundle& bundle) {
  Json json{{"format", kBundleFormat}, {"version", kBundleVersion}, {"designs", Json::array()}};
  for (const Design& design : bundle.designs)
    json["designs"].push_back(Json::parse(writeDesign(design), nullptr, false));
  json["stock"] = Json::array();
  for (const StockSheet& sheet : bundle.stock) json["stock"].push_back(stockJson(sheet));
  json["supplies"] = Json::array();
  for (const SupplyItem& item : bundle.supplies) json["supplies"].push_back(supplyJson(item));
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Bundle> readBundle(std::string_view text, std::string_view where) {
  const Result<OwnFile> own = openOwnFile(
      text, where, {kBundleFormat, kBundleVersion, kLargestBundleFile, ProblemCode::NotABundle});
  if (!own) return own.problem();
  const Json& json = own->json;
  const Fields fields(json, "");
  if (!json.contains("designs")) return fields.unreadable("designs");
  const Json& list = json["designs"];
  if (!list.is_array()) return fields.unreadable("designs");
  if (const auto problem = mostOf("designs", list.size(), kMostDesigns)) return *problem;
  Bundle bundle;
  for (const Json& item : list) {
    Result<Design> design = readDesign(item.dump(), where);
    if (!design) {
      const std::string place = "designs/" + std::to_string(bundle.designs.size() + 1);
      return *inPart(design.problem(), place, where);
    }
    bundle.designs.push_back(std::move(design).value());
  }
  if (const auto problem = readAllIfThere(fields, "stock", kMostSheets, readStock, bundle.stock))
    return *problem;
  if (const auto problem =
          readAllIfThere(fields, "supplies", kMostSupplies, readSupply, bundle.supplies))
    return *problem;
  if (const auto problem = fileLimitProblem(bundle)) return *problem;
  return bundle;
}

Result<std::string> bundleFileText(const Bundle& bundle, std::string_view where) {
  if (const auto problem = fileLimitProblem(bundle)) return *problem;
  std::string text = writeBundle(bundle);
  if (const auto problem = largestOf(where, text.size(), kLargestBundleFile)) return *problem;
  return text;
}

Result<Bundle> readBundleFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestBundleFile);
  if (!text) return text.problem();
  return readBundle(*text, path);
}

}  // namespace creasewright
