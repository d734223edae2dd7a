#include "document/card_json.h"

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
  return Card{*id, *name, *caliper, *grammage};
}

nlohmann::ordered_json cardJson(const Card& card) {
  return {{"id", card.id},
          {"name", card.name},
          {"caliper", exactText(card.caliper)},
          {"grammage", card.grammage}};
}

}  // namespace creasewright
