#pragma once

#include <array>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "edits/kinds/edit.h"
#include "fit/product.h"
#include "styles/style.h"

namespace creasewright {

/// The smallest and the largest product that a style suits: length, width, height as they are
/// typed.
struct SuitedSizes {
  std::array<Length, 3> least;
  std::array<Length, 3> most;
  bool operator==(const SuitedSizes&) const = default;
};

/// A style that a person made: one of the built-in styles with the changes by hand that were made
/// to it. Saved as a `.cwstyle` file; a design made from it carries it whole.
struct OwnStyle {
  std::string id;           ///< stays when the style is changed; see isOwnStyleId
  std::int64_t change = 1;  ///< how often it was kept under its id
  std::string title;
  std::string summary;               ///< what it suits, in the words of who made it
  std::optional<SuitedSizes> suits;  ///< nothing = any product
  std::string base;                  ///< id of the built-in style that it is made from
  Parameters parameters;             ///< of the base, as they were when it was kept
  std::vector<std::string> seen;     ///< keys of the measures that a later user sees
  /// By key of a measure that is not seen: a formula of the base's lengths and `caliper` that it
  /// follows. Others that are not seen follow the product where the base's needs say so, or stay.
  std::map<std::string, std::string, std::less<>> rules;
  std::vector<Edit> edits;  ///< made before a design's own
  std::string picture;      ///< SVG, or empty; for those who look at the file
  bool operator==(const OwnStyle&) const = default;
};

/// Whether a text can be the id of an own style, and the name of its file: small letters, digits
/// and hyphens, 80 at most, and no built-in style's id.
bool isOwnStyleId(std::string_view text);

/// An id for a style that is new: its title as far as an id can say it, and a number that follows
/// from all that it holds.
std::string ownStyleIdFor(const OwnStyle& style);

bool isSeen(const OwnStyle& style, std::string_view key);

/// On which axes (0 length, 1 width, 2 height) a product is smaller or larger than those it suits.
std::vector<std::size_t> axesOutside(const OwnStyle& style, const Product& product);

/// The measures that follow a rule, by key. A rule that cannot be read is a problem (codes of
/// formulas, UnknownParameter; where = the measure), and its measure is not among them.
struct RuledMeasures {
  std::map<std::string, Length, std::less<>> lengths;
  Problems problems;
};
RuledMeasures ruledMeasures(const OwnStyle& style, const Style& base, const Parameters& parameters,
                            const Workbench& bench);

/// `parameters` with all measures that follow a rule as their rules say, on the grid where their
/// limits let them, and not below `floors`.
Parameters withRules(const OwnStyle& style, const Style& base, Parameters parameters,
                     const Workbench& bench, const Floors& floors);

}  // namespace creasewright
