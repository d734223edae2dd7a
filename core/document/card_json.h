#pragma once

#include <nlohmann/json.hpp>

#include "document/json_fields.h"
#include "fit/card.h"

namespace creasewright {

/// A card as files hold it: `id`, `name`, `caliper` as exact text, `grammage` in g/m2.
nlohmann::ordered_json cardJson(const Card& card);

/// The card in the field `card` of `owner`. Errors: FieldMissing, FieldUnreadable, CardTooThick.
Result<Card> readCard(const Fields& owner);

}  // namespace creasewright
