#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/colour.h"
#include "base/result.h"
#include "base/worded.h"
#include "patterns/paper_pattern.h"

namespace creasewright {

/// The colours of a card's two sides; the face is the side that is the outside of the box. Without
/// one the card is plain, drawn in a warm white; a back without one is as the face. One of the
/// sides may be printed with a pattern, which covers its colour.
struct CardColours {
  std::optional<Colour> face = {};
  std::optional<Colour> back = {};
  std::optional<PaperPattern> pattern = {};
  bool patternBehind = false;  ///< it is on the back
  [[nodiscard]] const std::optional<Colour>& behind() const { return back ? back : face; }
  /// The pattern of a side, or nullptr.
  [[nodiscard]] const PaperPattern* patternOf(bool behindSide) const {
    return pattern && patternBehind == behindSide ? &*pattern : nullptr;
  }
  bool operator==(const CardColours&) const = default;
};

/// A colour to choose by a plain name.
struct NamedColour {
  std::string_view id;
  Worded title;
  Colour colour;
};

/// Ours, in the order in which they are shown.
std::span<const NamedColour> namedColours();

/// Reads `sage`, or `#8FA88A`. Error: ColourUnknown, with up to three names that are like it.
Result<Colour> parseColour(std::string_view text);

/// A colour as parseColour reads it: by its name where it has one.
std::string colourText(Colour colour);

/// Both sides as parseCardColours reads them; a pattern is left out.
std::string cardColourText(const CardColours& colours);

/// Reads `sage`, `sage/cream`, `plain` or `plain/cream`: the face, then the back. Error:
/// ColourUnknown.
Result<CardColours> parseCardColours(std::string_view text);

}  // namespace creasewright
