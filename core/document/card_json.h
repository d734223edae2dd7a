#pragma once

#include <nlohmann/json.hpp>

#include "document/json_fields.h"
#include "fit/card.h"

namespace creasewright {

/// A card as files hold it: `id`, `name`, `caliper` as exact text, `grammage` in g/m2.
nlohmann::ordered_json cardJson(const Card& card);

/// Puts the colours that a card has beside its other fields: `face`, `back`, and the `pattern` that
/// it is printed with (`id`, `scale` as exact text, `turn` in degrees, `side`, `colours` where it
/// has others than its own, the ground first).
void putColours(nlohmann::ordered_json& card, const CardColours& colours);

/// The card in the field `card` of `owner`. Errors: FieldMissing, FieldUnreadable, CardTooThick,
/// PatternUnknown, PatternScaleOff, PatternColours.
Result<Card> readCard(const Fields& owner);

}  // namespace creasewright
