#pragma once

#include <span>
#include <string>
#include <string_view>

#include "base/result.h"
#include "fit/card_colours.h"
#include "units/length.h"
#include "units/millimetres.h"

namespace creasewright {

/// A card stock as a design holds it.
struct Card {
  std::string id;
  std::string name;
  Length caliper;
  double grammage = 0;  ///< g/m2, 0 when unknown
  CardColours colours = {};
  bool operator==(const Card&) const = default;
};

inline constexpr Length kThickestCard = mm(3);
inline constexpr double kHeaviestCard = 10'000;  ///< g/m2, beyond any card
inline constexpr double kUsualBulk = 1.35;       ///< cm3/g, textured cover

/// Card stocks we list (resources/card_stock.json carries the sources).
std::span<const Card> cards();

/// A listed card by id, or one by measure: `0.3mm`, `12pt` (thousandths of an inch), or by grammage
/// and bulk in cm3/g: `300gsm`, `300gsm@1.3` (bulk 1.35 when not given).
/// A measure names its unit and is at least 0.01 mm.
/// Errors: CardUnknown (with the listed cards most like it), CardTooThick (above 3 mm).
Result<Card> findCard(std::string_view text);

/// Grams per square metre of a US basis weight: pounds per 500-sheet ream of `width` x `height`.
double grammage(double pounds, Length width, Length height);

/// Thickness = grammage x bulk / 1000 (mm, g/m2, cm3/g).
Length caliper(double grammage, double bulk);

}  // namespace creasewright
