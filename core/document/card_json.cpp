#include "document/card_json.h"

#include <utility>

#include "units/length_text.h"

namespace creasewright {

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
  return card;
}

void putColours(nlohmann::ordered_json& card, const CardColours& colours) {
  if (colours.face) card["face"] = hexText(*colours.face);
  if (colours.back) card["back"] = hexText(*colours.back);
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
