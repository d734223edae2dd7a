#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "units/length.h"

namespace creasewright {

/// How a length is written for a person.
struct LengthFormat {
  Unit unit = Unit::Millimetre;
  int denominator = 16;  ///< inches: nearest 1/16, 1/32 or 1/64
  int decimals = 2;      ///< millimetres and centimetres: at most so many, no trailing zeros
  bool withUnit = true;  ///< append " in", " mm", " cm"
  char decimalPoint = '.';
};

/// The unit a text of a length ends with (`mm`, `cm`, `in`, `inch`, `"`), if it names one.
std::optional<Unit> unitNamed(std::string_view text);

/// Reads a length as people write it: `2 5/16`, `2-5/16"`, `2.3125 in`, `58.7 mm`, `5,87 cm`,
/// `5.87cm`, `1/2"`. A bare number is in `unitless`. A comma or a point separates decimals; no
/// grouping. Typographic signs for the inch, the fraction bar, the minus, the common fractions
/// (`2⅜″`) and fractions set with raised and lowered digits (`2⁵⁄₁₆`) are read like the plain ones.
/// Negative lengths are read. Range: +-100 m. Errors: LengthUnreadable, LengthOutOfRange,
/// LengthZeroDivision.
Result<Length> parseLength(std::string_view text, Unit unitless);

/// The length of a roll: as parseLength and also in metres (`25 m`) and yards (`27 yd`), up to 1
/// km.
inline constexpr Length kLongestRoll = Length::nanometres(1'000'000'000'000);
Result<Length> parseRoll(std::string_view text, Unit unitless);

/// Writes a length: `2 5/16 in`, `58.7 mm`. A value that is not exactly at the printed one is
/// marked with a leading `~` in either unit.
std::string formatLength(Length length, const LengthFormat& format);

/// Exact text of a roll's length, in whole metres or yards where it is some; else as exactText.
/// parseRoll reads it back without loss.
std::string rollText(Length length);

/// Exact text for files: `2 5/16 in` when it is a whole 1/64 in, else decimal millimetres with as
/// many digits as needed (`58.7 mm`). parseLength reads it back without loss.
std::string exactText(Length length);

}  // namespace creasewright
