#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "base/result.h"
#include "units/length.h"

namespace creasewright {

/// The length a name stands for in a formula, or nothing. Error: what is wrong with it.
using FormulaNames = std::function<std::optional<Result<Length>>(std::string_view)>;

/// What a formula comes to: a length, or a plain number where no length stands in it.
struct FormulaValue {
  bool isLength = false;
  std::int64_t raw = 0;  ///< nanometres, or millionths of the number
};

/// Evaluates plain arithmetic on lengths and numbers, such as `depth / 2 - 3 mm` or `2 x 6 mm`:
/// + - * / (also x, × and ÷), brackets, lengths as parseLength reads them with their unit, and
/// names. Exact on fractions; the result is rounded once to a whole nanometre, halves away from
/// zero. Errors (where is left empty): FormulaUnreadable, FormulaUnknownName, FormulaUnits (a
/// length and a bare number added, lengths multiplied to an area), FormulaZeroDivision,
/// FormulaOutOfRange (beyond 100 m on the way), and those of the names.
Result<FormulaValue> evaluateFormula(std::string_view text, const FormulaNames& names);

}  // namespace creasewright
