#include "kits/class_kit.h"

#include <nlohmann/json.hpp>

#include "document/design_file.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::int64_t kLargestFile = 16 << 20;  // bytes
constexpr std::string_view kFormat = "creasewright-kit";

Json stockJson(const StockSheet& sheet) {
  Json json{
      {"name", sheet.name}, {"width", exactText(sheet.width)}, {"height", exactText(sheet.height)}};
  if (sheet.price > 0) json["price"] = sheet.price;
  if (sheet.atHand >= 0) json["at_hand"] = sheet.atHand;
  if (!sheet.code.empty()) json["code"] = sheet.code;
  if (!sheet.card.empty()) json["card"] = sheet.card;
  if (sheet.grain != Grain::Unknown) json["grain"] = sheet.grain == Grain::Long ? "long" : "short";
  if (sheet.pattern) json["pattern"] = true;
  if (sheet.owned > 0) json["owned"] = sheet.owned;
  return json;
}

Json supplyJson(const SupplyItem& item) {
  return {{"code", item.code},
          {"name", item.name},
          {"kind", supplyKindText(item.kind)},
          {"width", exactText(item.width)},
          {"length", exactText(item.length)},
          {"pieces", item.pieces},
          {"price", item.price},
          {"at_hand", item.atHand}};
}

Result<int> countIn(const Fields& fields, std::string_view key, int least, int most) {
  const Result<std::int64_t> value = fields.whole(key);
  if (!value) return value.problem();
  if (*value < least || *value > most)
    return Problem{ProblemCode::TakersWrong,
                   fields.path(key),
                   {*value, std::int64_t{least}, std::int64_t{most}}};
  return static_cast<int>(*value);
}

Result<StockSheet> readStock(const Fields& fields) {
  StockSheet sheet;
  const Result<std::string> name = fields.text("name");
  if (!name) return name.problem();
  sheet.name = *name;
  for (const auto& [key, side] :
       {std::pair{"width", &sheet.width}, std::pair{"height", &sheet.height}}) {
    const Result<Length> length = fields.length(key);
    if (!length) return length.problem();
    if (*length <= Length()) return fields.unreadable(key);
    *side = *length;
  }
  if (fields.has("price")) {
    const Result<int> price = countIn(fields, "price", 0, 1'000'000'000);
    if (!price) return price.problem();
    sheet.price = *price;
  }
  if (fields.has("at_hand")) {
    const Result<int> atHand = countIn(fields, "at_hand", 0, 1'000'000);
    if (!atHand) return atHand.problem();
    sheet.atHand = *atHand;
  }
  for (const auto& [key, words] :
       {std::pair{"code", &sheet.code}, std::pair{"card", &sheet.card}}) {
    if (!fields.has(key)) continue;
    const Result<std::string> text = fields.text(key);
    if (!text) return text.problem();
    *words = *text;
  }
  if (fields.has("grain")) {
    const Result<std::string> grain = fields.text("grain");
    if (!grain || (*grain != "long" && *grain != "short")) return fields.unreadable("grain");
    sheet.grain = *grain == "long" ? Grain::Long : Grain::Short;
  }
  if (fields.has("pattern")) {
    const Result<bool> pattern = fields.flag("pattern");
    if (!pattern) return pattern.problem();
    sheet.pattern = *pattern;
  }
  if (fields.has("owned")) {
    const Result<int> owned = countIn(fields, "owned", 0, 1'000'000);
    if (!owned) return owned.problem();
    sheet.owned = *owned;
  }
  return sheet;
}

Result<SupplyItem> readSupply(const Fields& fields) {
  SupplyItem item;
  for (const auto& [key, words] : {std::pair{"code", &item.code}, std::pair{"name", &item.name}}) {
    const Result<std::string> text = fields.text(key);
    if (!text) return text.problem();
    *words = *text;
  }
  const Result<std::string> kind = fields.text("kind");
  if (!kind) return kind.problem();
  const std::optional<SupplyItemKind> known = supplyKind(*kind);
  if (!known) return fields.unreadable("kind");
  item.kind = *known;
  for (const auto& [key, side] :
       {std::pair{"width", &item.width}, std::pair{"length", &item.length}}) {
    const Result<Length> length = fields.length(key);
    if (!length) return length.problem();
    if (*length < Length()) return fields.unreadable(key);
    *side = *length;
  }
  const Result<int> pieces = countIn(fields, "pieces", 0, 1'000'000);
  if (!pieces) return pieces.problem();
  const Result<int> price = countIn(fields, "price", 0, 1'000'000'000);
  if (!price) return price.problem();
  const Result<int> atHand = countIn(fields, "at_hand", 0, 1'000'000);
  if (!atHand) return atHand.problem();
  item.pieces = *pieces;
  item.price = *price;
  item.atHand = *atHand;
  return item;
}

/// What version 2 brought: supplies, the takers' names, and whether the grain counts.
std::optional<Problem> readVersion2(const Fields& fields, ClassKit& kit) {
  const Result<bool> grain = fields.flag("keep_grain");
  if (!grain) return grain.problem();
  kit.keepGrain = *grain;
  const Result<std::vector<Fields>> supplies = fields.objects("supplies");
  if (!supplies) return supplies.problem();
  if (supplies->size() > 500) return fields.unreadable("supplies");
  for (const Fields& each : *supplies) {
    const Result<SupplyItem> item = readSupply(each);
    if (!item) return item.problem();
    kit.supplies.push_back(*item);
  }
  const Result<std::vector<std::string>> names = fields.texts("names");
  if (!names) return names.problem();
  kit.names = *names;
  return std::nullopt;
}

Result<KitItem> readItem(const Json& json, const Fields& fields, std::string_view where) {
  const Result<int> perPerson = countIn(fields, "per_person", 1, 100);
  if (!perPerson) return perPerson.problem();
  const Result<Fields> design = fields.object("design");
  if (!design) return design.problem();
  Result<Design> read = readDesign(json["design"].dump(), where);
  if (!read) return read.problem();
  return KitItem{std::move(read).value(), *perPerson};
}

/// The objects of an array that is not longer than any kit's.
Result<std::vector<Fields>> listIn(const Fields& fields, std::string_view key) {
  constexpr std::size_t kMost = 200;
  Result<std::vector<Fields>> list = fields.objects(key);
  if (list && list->size() > kMost) return fields.unreadable(key);
  return list;
}

Result<ClassKit> readCurrent(const Json& json, const Fields& fields, std::int64_t version,
                             std::string_view where) {
  ClassKit kit;
  const Result<std::string> title = fields.text("title");
  if (!title) return title.problem();
  kit.title = *title;
  const Result<int> takers = countIn(fields, "takers", 1, kMostTakers);
  if (!takers) return takers.problem();
  kit.takers = *takers;
  const Result<int> spares = countIn(fields, "spares", 0, kMostTakers);
  if (!spares) return spares.problem();
  kit.spares = *spares;
  const Result<std::vector<Fields>> stock = listIn(fields, "stock");
  if (!stock) return stock.problem();
  for (const Fields& each : *stock) {
    Result<StockSheet> sheet = readStock(each);
    if (!sheet) return sheet.problem();
    kit.stock.push_back(std::move(sheet).value());
  }
  const Result<std::vector<Fields>> items = listIn(fields, "items");
  if (!items) return items.problem();
  for (std::size_t i = 0; i < items->size(); ++i) {
    Result<KitItem> item = readItem(json["items"][i], (*items)[i], where);
    if (!item) return item.problem();
    kit.items.push_back(std::move(item).value());
  }
  if (version < 2) return kit;
  if (const auto problem = readVersion2(fields, kit)) return *problem;
  return kit;
}

}  // namespace

std::string writeKit(const ClassKit& kit) {
  Json json{{"format", kFormat},     {"version", kKitVersion}, {"title", kit.title},
            {"takers", kit.takers},  {"spares", kit.spares},   {"stock", Json::array()},
            {"items", Json::array()}};
  json["keep_grain"] = kit.keepGrain;
  json["names"] = kit.names;
  json["supplies"] = Json::array();
  for (const SupplyItem& item : kit.supplies) json["supplies"].push_back(supplyJson(item));
  for (const StockSheet& sheet : kit.stock) json["stock"].push_back(stockJson(sheet));
  for (const KitItem& item : kit.items)
    json["items"].push_back({{"per_person", item.perPerson},
                             {"design", Json::parse(writeDesign(item.design), nullptr, false)}});
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<ClassKit> readKit(std::string_view text, std::string_view where) {
  const Result<OwnFile> own =
      openOwnFile(text, where, {kFormat, kKitVersion, kLargestFile, ProblemCode::NotAKit});
  if (!own) return own.problem();
  return readCurrent(own->json, Fields(own->json, ""), own->version, where);
}

Result<ClassKit> readKitFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestFile);
  if (!text) return text.problem();
  return readKit(*text, path);
}

}  // namespace creasewright
