#include "stock/stock_json.h"

#include "base/file_limits.h"
#include "document/card_json.h"
#include "document/limit_problems.h"
#include "fit/card.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

/// Reads fields one after another; after the first that cannot be read nothing more is.
class FieldReader {
 public:
  explicit FieldReader(const Fields& fields) : fields_(fields) {}

  FieldReader& text(std::string_view key, std::string& target) {
    return take(fields_.text(key), target);
  }
  /// Longer than zero.
  FieldReader& side(std::string_view key, Length& target) {
    take(fields_.length(key), target);
    return require(target > Length(), key);
  }
  FieldReader& length(std::string_view key, Length& target) {
    take(fields_.length(key), target);
    return require(target >= Length(), key);
  }
  FieldReader& roll(std::string_view key, Length& target) {
    take(fields_.roll(key), target);
    return require(target >= Length(), key);
  }
  template <class Count>
  FieldReader& count(std::string_view key, std::int64_t most, Count& target) {
    return take(countIn(fields_, key, 0, most), target);
  }
  FieldReader& flag(std::string_view key, bool& target) { return take(fields_.flag(key), target); }
  FieldReader& number(std::string_view key, double& target) {
    return take(fields_.number(key), target);
  }
  FieldReader& colour(std::string_view key, std::optional<Colour>& target) {
    std::string written;
    text(key, written);
    target = colourFromHex(written);
    return require(target.has_value(), key);
  }
  FieldReader& require(bool holds, std::string_view key) {
    if (!problem_ && !holds) problem_ = fields_.unreadable(key);
    return *this;
  }
  [[nodiscard]] const std::optional<Problem>& problem() const { return problem_; }

 private:
  template <class Value, class Target>
  FieldReader& take(const Result<Value>& value, Target& target) {
    if (problem_) return *this;
    if (value)
      target = *value;
    else
      problem_ = value.problem();
    return *this;
  }

  const Fields& fields_;
  std::optional<Problem> problem_;
};

void readGrain(FieldReader& reader, Grain& target) {
  std::string grain;
  reader.text("grain", grain).require(grain == "long" || grain == "short", "grain");
  target = grain == "long" ? Grain::Long : Grain::Short;
}

}  // namespace

nlohmann::ordered_json stockJson(const StockSheet& sheet) {
  nlohmann::ordered_json json{
      {"name", sheet.name}, {"width", exactText(sheet.width)}, {"height", exactText(sheet.height)}};
  if (sheet.price > 0) json["price"] = sheet.price;
  if (sheet.atHand >= 0) json["at_hand"] = sheet.atHand;
  if (!sheet.code.empty()) json["code"] = sheet.code;
  if (!sheet.card.empty()) json["card"] = sheet.card;
  if (sheet.grain != Grain::Unknown) json["grain"] = sheet.grain == Grain::Long ? "long" : "short";
  if (sheet.pattern) json["pattern"] = true;
  if (sheet.owned > 0) json["owned"] = sheet.owned;
  if (sheet.grammage > 0) json["grammage"] = sheet.grammage;
  if (!sheet.basis.empty()) json["basis"] = sheet.basis;
  if (sheet.caliper > Length()) json["caliper"] = exactText(sheet.caliper);
  if (sheet.oneSided) json["one_sided"] = true;
  putColours(json, sheet.colours);
  return json;
}

nlohmann::ordered_json supplyJson(const SupplyItem& item) {
  return {{"code", item.code},
          {"name", item.name},
          {"kind", supplyKindText(item.kind)},
          {"width", exactText(item.width)},
          {"length", rollText(item.length)},
          {"pieces", item.pieces},
          {"price", item.price},
          {"at_hand", item.atHand}};
}

Result<int> countIn(const Fields& fields, std::string_view key, std::int64_t least,
                    std::int64_t most) {
  const Result<std::int64_t> value = fields.whole(key);
  if (!value) return value.problem();
  if (const auto problem = countWithin(fields.path(key), *value, least, most)) return *problem;
  return static_cast<int>(*value);
}

Result<StockSheet> readStock(const Fields& fields) {
  StockSheet sheet;
  FieldReader reader(fields);
  // As a table asks, so that whatever a bundle brings can stand in a person's own.
  reader.text("name", sheet.name)
      .require(!sheet.name.empty(), "name")
      .side("width", sheet.width)
      .side("height", sheet.height);
  const auto optional = [&](std::string_view key, const auto& read) {
    if (fields.has(key)) read();
  };
  optional(
      "price", [&] { reader.count("price", kDearest, sheet.price); });
  optional(
      "at_hand", [&] { reader.count("at_hand", kMostCounted, sheet.atHand); });
  optional(
      "owned", [&] { reader.count("owned", kMostCounted, sheet.owned); });
  optional(
      "code", [&] { reader.text("code", sheet.code); });
  optional(
      "card", [&] { reader.text("card", sheet.card); });
  optional(
      "basis", [&] { reader.text("basis", sheet.basis); });
  optional(
      "pattern", [&] { reader.flag("pattern", sheet.pattern); });
  optional(
      "one_sided", [&] { reader.flag("one_sided", sheet.oneSided); });
  optional(
      "grain", [&] { readGrain(reader, sheet.grain); });
  optional("caliper", [&] {
    reader.side("caliper", sheet.caliper).require(sheet.caliper <= kThickestCard, "caliper");
  });
  for (const auto& [key, side] :
       {std::pair{"face", &sheet.colours.face}, {"back", &sheet.colours.back}})
    optional(
        key, [&reader, key, side] { reader.colour(key, *side); });
  optional("grammage", [&] {
    reader.number("grammage", sheet.grammage)
        .require(sheet.grammage >= 0 && sheet.grammage <= kHeaviestCard, "grammage");
  });
  if (reader.problem()) return *reader.problem();
  return sheet;
}

Result<SupplyItem> readSupply(const Fields& fields) {
  SupplyItem item;
  FieldReader reader(fields);
  std::string kind;
  reader.text("code", item.code).text("name", item.name).text("kind", kind);
  const std::optional<SupplyItemKind> known = supplyKind(kind);
  const bool rolled = known == SupplyItemKind::Tape || known == SupplyItemKind::Ribbon;
  reader.require(!item.name.empty(), "name")
      .require(known.has_value(), "kind")
      .length("width", item.width)
      .roll("length", item.length)
      .count("pieces", kMostCounted, item.pieces)
      .count("price", kDearest, item.price)
      .count("at_hand", kMostCounted, item.atHand);
  reader.require(!rolled || item.width > Length(), "width")
      .require(!rolled || item.length > Length(), "length");
  if (reader.problem()) return *reader.problem();
  item.kind = *known;
  return item;
}

}  // namespace creasewright
