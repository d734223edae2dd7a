#include "kits/class_kit.h"

#include <tuple>

#include <nlohmann/json.hpp>

#include "base/file_limits.h"
#include "document/card_json.h"
#include "document/design_file.h"
#include "document/design_units.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "document/limit_problems.h"
#include "stock/stock_json.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view kKitFormat = "creasewright-kit";

/// What version 2 brought: supplies, the takers' names, and whether the grain counts.
std::optional<Problem> readVersion2(const Fields& fields, ClassKit& kit) {
  const Result<bool> grain = fields.flag("keep_grain");
  if (!grain) return grain.problem();
  kit.keepGrain = *grain;
  if (fields.has("no_extras")) {
    const Result<bool> extras = fields.flag("no_extras");
    if (!extras) return extras.problem();
    kit.noExtras = *extras;
  }
  if (const auto problem = readAll(fields, "supplies", kMostSupplies, readSupply, kit.supplies))
    return problem;
  const Result<std::vector<std::string>> names = fields.texts("names", kMostNames);
  if (!names) return names.problem();
  kit.names = *names;
  return std::nullopt;
}

Json itemJson(const KitItem& item) {
  Json json{{"per_person", item.perPerson}};
  if (!item.piece.empty()) json["piece"] = item.piece;
  json["design"] = Json::parse(writeDesign(item.design), nullptr, false);
  return json;
}

Result<KitItem> readItem(const Json& json, const Fields& fields, std::string_view where) {
  const Result<int> perPerson = countIn(fields, "per_person", 1, kMostPerPerson);
  if (!perPerson) return perPerson.problem();
  std::string piece;
  if (fields.has("piece")) {
    const Result<std::string> text = fields.text("piece");
    if (!text) return text.problem();
    piece = *text;
  }
  const Result<Fields> design = fields.object("design");
  if (!design) return design.problem();
  Result<Design> read = readDesign(json["design"].dump(), where);
  if (!read) return *inPart(read.problem(), fields.path("design"), where);
  return KitItem{std::move(read).value(), *perPerson, std::move(piece)};
}

Json blankJson(const PlainBlank& blank) {
  return {{"name", blank.name},
          {"width", exactText(blank.width)},
          {"height", exactText(blank.height)},
          {"card", cardJson(blank.card)},
          {"per_person", blank.perPerson}};
}

Result<PlainBlank> readBlank(const Fields& fields) {
  PlainBlank blank;
  const Result<std::string> name = fields.text("name");
  if (!name) return name.problem();
  blank.name = *name;
  for (const auto& [key, side] :
       {std::pair{"width", &blank.width}, std::pair{"height", &blank.height}}) {
    const Result<Length> length = fields.length(key);
    if (!length) return length.problem();
    if (*length <= Length()) return fields.unreadable(key);
    *side = *length;
  }
  const Result<Card> card = readCard(fields);
  if (!card) return card.problem();
  blank.card = *card;
  const Result<int> perPerson = countIn(fields, "per_person", 1, kMostPerPerson);
  if (!perPerson) return perPerson.problem();
  blank.perPerson = *perPerson;
  return blank;
}

/// What version 3 brought: plain blanks and the size of the labels.
std::optional<Problem> readVersion3(const Fields& fields, ClassKit& kit) {
  if (const auto problem = readAll(fields, "blanks", kMostBlanks, readBlank, kit.blanks))
    return problem;
  const Result<Fields> label = fields.object("label");
  if (!label) return label.problem();
  for (const auto& [key, side] :
       {std::pair{"width", &kit.labelWidth}, std::pair{"height", &kit.labelHeight}}) {
    const Result<Length> length = label->length(key);
    if (!length) return length.problem();
    if (*length < kSmallestLabel || *length > kLargestLabel) return label->unreadable(key);
    *side = *length;
  }
  return std::nullopt;
}

/// What version 5 brought: what the sheets are planned for. Older kits keep to fewest sheets.
std::optional<Problem> readVersion5(const Fields& fields, ClassKit& kit) {
  const Result<std::string> text = fields.text("plan");
  if (!text) return text.problem();
  const std::optional<PlanGoal> goal = findPlanGoal(*text);
  if (!goal) return fields.unreadable("plan");
  kit.goal = *goal;
  return std::nullopt;
}

Json pricingJson(const Pricing& pricing) {
  return {{"currency", pricing.currency}, {"hourly_rate", pricing.hourlyRate},
          {"overhead", pricing.overhead}, {"margin", pricing.margin},
          {"fee", pricing.fee},           {"class_costs", pricing.classCosts}};
}

/// What version 6 brought: what is charged.
std::optional<Problem> readVersion6(const Fields& fields, ClassKit& kit) {
  if (!fields.has("pricing")) return std::nullopt;
  const Result<Fields> of = fields.object("pricing");
  if (!of) return of.problem();
  Pricing pricing;
  const Result<std::string> currency = of->text("currency");
  if (!currency) return currency.problem();
  pricing.currency = *currency;
  for (const auto& [key, target, most] : {std::tuple{"overhead", &pricing.overhead, kMostOverhead},
                                          {"margin", &pricing.margin, kMostMargin},
                                          {"fee", &pricing.fee, kMostFee}}) {
    const Result<int> percent = countIn(*of, key, 0, most);
    if (!percent) return percent.problem();
    *target = *percent;
  }
  for (const auto& [key, target] :
       {std::pair{"hourly_rate", &pricing.hourlyRate}, {"class_costs", &pricing.classCosts}}) {
    const Result<int> coins = countIn(*of, key, 0, kDearest);
    if (!coins) return coins.problem();
    *target = *coins;
  }
  kit.pricing = pricing;
  return std::nullopt;
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
  if (const auto problem = readAll(fields, "stock", kMostSheets, readStock, kit.stock))
    return *problem;
  const Result<std::vector<Fields>> items = fields.objects("items", kMostItems);
  if (!items) return items.problem();
  for (std::size_t i = 0; i < items->size(); ++i) {
    Result<KitItem> item = readItem(json["items"][i], (*items)[i], where);
    if (!item) return item.problem();
    kit.items.push_back(std::move(item).value());
  }
  if (version >= 2)
    if (const auto problem = readVersion2(fields, kit)) return *problem;
  if (version >= 3)
    if (const auto problem = readVersion3(fields, kit)) return *problem;
  if (version >= 5)
    if (const auto problem = readVersion5(fields, kit)) return *problem;
  if (version >= 6)
    if (const auto problem = readVersion6(fields, kit)) return *problem;
  return kit;
}

}  // namespace

std::string_view planGoalText(PlanGoal goal) {
  switch (goal) {
    case PlanGoal::Fewest:
      return "fewest";
    case PlanGoal::Easy:
      return "easy";
  }
  return {};
}

std::optional<PlanGoal> findPlanGoal(std::string_view text) {
  for (const PlanGoal goal : {PlanGoal::Fewest, PlanGoal::Easy})
    if (planGoalText(goal) == text) return goal;
  return std::nullopt;
}

bool measuresInInches(const ClassKit& kit) {
  return kit.items.empty() ? !kit.stock.empty() && soldByInches(kit.stock.front())
                           : measuresInInches(kit.items.front().design);
}

ToolGrid trimmerOf(const ClassKit& kit) {
  return measuresInInches(kit) ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
}

std::string writeKit(const ClassKit& kit) {
  Json json{{"format", kKitFormat},  {"version", kKitVersion}, {"title", kit.title},
            {"takers", kit.takers},  {"spares", kit.spares},   {"stock", Json::array()},
            {"items", Json::array()}};
  json["plan"] = planGoalText(kit.goal);
  json["keep_grain"] = kit.keepGrain;
  if (kit.noExtras) json["no_extras"] = true;
  if (kit.pricing) json["pricing"] = pricingJson(*kit.pricing);
  json["label"] = {{"width", exactText(kit.labelWidth)}, {"height", exactText(kit.labelHeight)}};
  json["names"] = kit.names;
  json["supplies"] = Json::array();
  for (const SupplyItem& item : kit.supplies) json["supplies"].push_back(supplyJson(item));
  for (const StockSheet& sheet : kit.stock) json["stock"].push_back(stockJson(sheet));
  for (const KitItem& item : kit.items) json["items"].push_back(itemJson(item));
  json["blanks"] = Json::array();
  for (const PlainBlank& blank : kit.blanks) json["blanks"].push_back(blankJson(blank));
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<ClassKit> readKit(std::string_view text, std::string_view where) {
  const Result<OwnFile> own =
      openOwnFile(text, where, {kKitFormat, kKitVersion, kLargestKitFile, ProblemCode::NotAKit});
  if (!own) return own.problem();
  Result<ClassKit> kit = readCurrent(own->json, Fields(own->json, ""), own->version, where);
  if (!kit) return kit;
  if (const auto problem = fileLimitProblem(*kit)) return *problem;
  return kit;
}

Result<std::string> kitFileText(const ClassKit& kit, std::string_view where) {
  if (const auto problem = fileLimitProblem(kit)) return *problem;
  std::string text = writeKit(kit);
  if (const auto problem = largestOf(where, text.size(), kLargestKitFile)) return *problem;
  return text;
}

Result<ClassKit> readKitFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestKitFile);
  if (!text) return text.problem();
  return readKit(*text, path);
}

}  // namespace creasewright
