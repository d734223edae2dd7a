#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "document/design.h"

namespace creasewright {

/// What a maker says of a style that is kept.
struct StyleWords {
  std::string title;
  std::string summary;
  std::optional<SuitedSizes> suits;
  std::vector<std::string> seen;  ///< keys of the measures that a later user sees
  std::map<std::string, std::string, std::less<>> rules;  ///< for some of the others: formulas
};

/// The words that a style was kept with.
StyleWords wordsOf(const OwnStyle& style);

/// What to begin with for a design: the words of the style it is made from, or none, and all
/// measures seen.
StyleWords wordsFor(const Design& design);

/// The design as a style of its maker's own: its base, its measures, the changes of the style that
/// it is made from and its own, and a picture. Product, card, extras and notes stay with the
/// design. Bare numbers in its changes and rules get the unit that they have in the design. Where
/// `before` is given the style is that one kept again: its id stays, its number of changes goes up.
/// Errors: what keeps the design from being built; UnknownParameter, and codes of formulas for
/// rules (where = the measure); those of fileLimitProblem.
Result<OwnStyle> keepStyle(const Design& design, const StyleWords& words,
                           const OwnStyle* before = nullptr);

/// The design made from no own style: what the style brought are changes of its own, and all its
/// measures are free. Nothing else changes.
Design freedFromStyle(Design design);

}  // namespace creasewright
