#pragma once

#include <cstdint>
#include <string>

#include "fit/card_colours.h"
#include "units/length.h"

namespace creasewright {

/// Which side of a sheet its grain runs along.
enum class Grain { Unknown, Long, Short };

/// A kind of sheet as it is sold and kept.
struct StockSheet {
  std::string name;
  Length width;
  Length height;
  std::int64_t price = 0;  ///< smallest coin; 0 = not told
  int atHand = -1;         ///< no more can be had; -1 = as many as wanted
  std::string code = {};   ///< the user's own
  std::string card = {};   ///< id of the card it is; empty = any
  Grain grain = Grain::Unknown;
  bool pattern = false;    ///< printed with a direction: blanks are not turned
  int owned = 0;           ///< on the shelf already, so not to be bought
  double grammage = 0;     ///< g/m2; 0 = not told
  std::string basis = {};  ///< weight as sold in pounds, with its basis: `65 lb cover`
  Length caliper = {};     ///< thickness; zero = not told
  bool oneSided = false;   ///< colour or pattern on one face only
  /// Of its face, and of its back where that is another; a sheet without them serves designs of any
  /// colour, one with them only those of its colours.
  CardColours colours = {};
  bool operator==(const StockSheet&) const = default;
};

/// Whether a sheet measures whole half inches, as those sold by inches do.
inline bool soldByInches(const StockSheet& sheet) {
  return sheet.width.nm() % Length::inches(1, 2).nm() == 0;
}

}  // namespace creasewright
