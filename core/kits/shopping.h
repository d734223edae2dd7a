#pragma once

#include <optional>
#include <vector>

#include "kits/kit_plan.h"

namespace creasewright {

/// What a class needs of one thing, and what has to be bought of it.
struct ShoppingLine {
  enum class Kind { Sheets, Tape, Ribbon, Glue, Foam };
  Kind kind = Kind::Sheets;
  int card = -1;                      ///< Sheets: of KitPlan::cards
  int stock = -1;                     ///< Sheets: of ClassKit::stock
  int supply = -1;                    ///< of ClassKit::supplies; -1 = none of that kind is listed
  Length width;                       ///< Tape, Ribbon; Foam: its thickness
  Length length;                      ///< Tape, Ribbon: needed in all
  std::optional<Colour> colour = {};  ///< Ribbon
  int strips = 0;                     ///< Tape: strips; Glue: places; Foam: dots
  int needed = 0;                     ///< sheets or packs
  int atHand = 0;                     ///< of these, at most `needed`
  int toBuy = 0;                      ///< needed less what is at hand
  std::int64_t cost = 0;              ///< of what is to buy, smallest coin
};

struct ShoppingList {
  std::vector<ShoppingLine> lines;
  std::int64_t cost = 0;  ///< of all that is to buy
  bool complete = true;   ///< every line that is to buy has a price
};

/// The listed item of a kind and width (the nearest within 0.6 mm: 9 mm and 3/8 in are one tape) by
/// its place in ClassKit::supplies, or -1. Glue is any glue, or adhesive dots, without a width.
int supplyFor(const ClassKit& kit, SupplyItemKind kind, Length width);

/// Whole sheets and whole packs, what is at hand taken off. Tape and ribbon take the listed roll of
/// their width (the nearest within 0.6 mm).
ShoppingList shoppingFor(const KitPlan& plan);

}  // namespace creasewright
