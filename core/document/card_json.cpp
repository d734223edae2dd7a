#include "document/card_json.h"

#include <utility>

#include "patterns/pattern.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostInks = 16;  // more than any pattern has

Result<std::vector<Colour>> readInks(const Fields& fields) {
  std::vector<Colour> colours;
  if (!fields.has("colours")) return colours;
  const Result<std::vector<std::string>> written = fields.texts("colours", kMostInks);
  if (!written) return written.problem();
  for (const std::string& text : *written) {
    const std::optional<Colour> colour = colourFromHex(text);
    if (!colour) return fields.unreadable("colours");
    colours.push_back(*colour);
  }
  return colours;
}

/// The field `pattern` of a card, where it has one.
std::optional<Problem> readPattern(const Fields& card, CardColours& colours) {
  if (!card.has("pattern")) return std::nullopt;
  const Result<Fields> fields = card.object("pattern");
  if (!fields) return fields.problem();
  const Result<std::string> id = fields->text("id");
  if (!id) return id.problem();
  const Result<Length> scale = fields->length("scale");
  if (!scale) return scale.problem();
  const Result<std::int64_t> turn = fields->whole("turn");
  if (!turn) return turn.problem();
  if (*turn < 0 || *turn >= 360) return fields->unreadable("turn");
  const Result<std::string> side = fields->text("side");
  if (!side) return side.problem();
  if (*side != "face" && *side != "back") return fields->unreadable("side");
  const Result<std::vector<Colour>> inks = readInks(*fields);
  if (!inks) return inks.problem();
  const Result<PaperPattern> paper = checkedPaper({*id, *scale, static_cast<int>(*turn), *inks});
  if (!paper) return paper.problem();
  colours.pattern = *paper;
  colours.patternBehind = *side == "back";
  return std::nullopt;
}

Json patternJson(const PaperPattern& paper, bool behind) {
  Json json{{"id", paper.id},
            {"scale", exactText(paper.scale)},
            {"turn", paper.turn},
            {"side", behind ? "back" : "face"}};
  if (paper.colours.empty()) return json;
  json["colours"] = Json::array();
  for (const Colour& colour : paper.colours) json["colours"].push_back(hexText(colour));
  return json;
}

}  // namespace

Result<Card> readCard(const Fields& owner) {
  const Result<Fields> fields = owner.object("card");
  if (!fields) return fields.problem();
  const Result<std::string> id = fields->text("id");
  if (!id) return id.problem();
  const Result<std::string> name = fields->text("name");
  if (!name) return name.problem();
  const Result<Length> caliper = fields->length("caliper");
  if (!caliper) return caliper.problem();
  if (*caliper <= Length()) return fields->unreadable("caliper");
  if (*caliper > kThickestCard)
    return Problem{ProblemCode::CardTooThick, fields->path("caliper"), {*caliper, kThickestCard}};
  const Result<double> grammage = fields->number("grammage");
  if (!grammage) return grammage.problem();
  if (!(*grammage >= 0 && *grammage <= kHeaviestCard)) return fields->unreadable("grammage");
  Card card{*id, *name, *caliper, *grammage};
  for (const auto& [key, side] :
       {std::pair{"face", &card.colours.face}, {"back", &card.colours.back}}) {
    if (!fields->has(key)) continue;
    const Result<std::string> written = fields->text(key);
    if (!written) return written.problem();
    *side = colourFromHex(*written);
    if (!*side) return fields->unreadable(key);
  }
  if (const auto problem = readPattern(*fields, card.colours)) return *problem;
  return card;
}

void putColours(nlohmann::ordered_json& card, const CardColours& colours) {
  if (colours.face) card["face"] = hexText(*colours.face);
  if (colours.back) card["back"] = hexText(*colours.back);
  if (colours.pattern) card["pattern"] = patternJson(*colours.pattern, colours.patternBehind);
}

nlohmann::ordered_json cardJson(const Card& card) {
  nlohmann::ordered_json json{{"id", card.id},
                              {"name", card.name},
                              {"caliper", exactText(card.caliper)},
                              {"grammage", card.grammage}};
  putColours(json, card.colours);
  return json;
}

}  // namespace creasewright
