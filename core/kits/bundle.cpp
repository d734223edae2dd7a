#include "kits/bundle.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "document/design_file.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "kits/stock_json.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::int64_t kLargestFile = 16 << 20;  // bytes
constexpr std::size_t kMostDesigns = 5000;
constexpr std::size_t kMostRows = 500;
constexpr std::string_view kFormat = "creasewright-bundle";

/// A design's problem with its place in the bundle, counted from 1.
Problem inBundle(Problem problem, std::size_t number, std::string_view where) {
  const std::string place = "designs/" + std::to_string(number);
  problem.where = problem.where == where  ? std::string(where) + ": " + place
                  : problem.where.empty() ? place
                                          : place + "/" + problem.where;
  return problem;
}

/// An array that is not there is empty.
template <class Item>
std::optional<Problem> readAllIfThere(const Fields& fields, std::string_view key,
                                      Result<Item> (*read)(const Fields&),
                                      std::vector<Item>& items) {
  return fields.has(key) ? readAll(fields, key, kMostRows, read, items) : std::nullopt;
}

}  // namespace

std::string writeBundle(const Bundle& bundle) {
  Json json{{"format", kFormat}, {"version", kBundleVersion}, {"designs", Json::array()}};
  for (const Design& design : bundle.designs)
    json["designs"].push_back(Json::parse(writeDesign(design), nullptr, false));
  json["stock"] = Json::array();
  for (const StockSheet& sheet : bundle.stock) json["stock"].push_back(stockJson(sheet));
  json["supplies"] = Json::array();
  for (const SupplyItem& item : bundle.supplies) json["supplies"].push_back(supplyJson(item));
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Bundle> readBundle(std::string_view text, std::string_view where) {
  const Result<OwnFile> own =
      openOwnFile(text, where, {kFormat, kBundleVersion, kLargestFile, ProblemCode::NotADesign});
  if (!own) return own.problem();
  const Json& json = own->json;
  const Fields fields(json, "");
  if (!json.contains("designs")) return fields.unreadable("designs");
  const Json& list = json["designs"];
  if (!list.is_array() || list.size() > kMostDesigns) return fields.unreadable("designs");
  Bundle bundle;
  for (const Json& item : list) {
    Result<Design> design = readDesign(item.dump(), where);
    if (!design) return inBundle(design.problem(), bundle.designs.size() + 1, where);
    bundle.designs.push_back(std::move(design).value());
  }
  if (const auto problem = readAllIfThere(fields, "stock", readStock, bundle.stock))
    return *problem;
  if (const auto problem = readAllIfThere(fields, "supplies", readSupply, bundle.supplies))
    return *problem;
  return bundle;
}

Result<Bundle> readBundleFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestFile);
  if (!text) return text.problem();
  return readBundle(*text, path);
}

}  // namespace creasewright
