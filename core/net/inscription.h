#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/polygon.h"
#include "lettering/typeface.h"

namespace creasewright {

/// The side of its column that a line of words keeps to, as it is read.
enum class WordsSide { Left, Centre, Right };

/// A baseline that is bent to a circle: over its middle, or under it where words are read from the
/// middle outwards.
struct WordsArc {
  double radius = 0;   ///< of the baseline, mm
  bool lower = false;  ///< under the middle; letters stand with their feet outwards
  double most = 300;   ///< degrees that words may take

  /// The middle of the circle; the middle of the baseline lies at `at` and runs at `turnDegrees`.
  [[nodiscard]] Point centre(Point at, double turnDegrees) const;
  /// The radius on which letters of this height stand beside each other without touching, mm.
  [[nodiscard]] double pace(double height) const;
  /// How long a line may be for the degrees it may take, mm.
  [[nodiscard]] double longest(double height) const;
};

/// A line of text written on the outside of a panel, `height` mm type.
struct Inscription {
  int panel = 0;
  Point at;  ///< middle of the baseline, or of that of its column (panel's own frame)
  double height = 3;
  std::string text;
  double turnDegrees = 0;  ///< against the clock, as the net is laid flat
  Typeface face = Typeface::Plain;
  WordsSide side = WordsSide::Centre;
  double column = 0;  ///< mm; where `side` is not the centre
  std::optional<WordsArc> arc = {};
  bool shrinks = true;  ///< it is made smaller where it does not fit
};

/// How long words of this height may be where they stand on card with this outline and these
/// openings: to both sides of the middle of their line, from its descenders to its capitals, as far
/// as the card goes; no longer than their column, nor than their arc may take. mm
double roomFor(const Polygon& outline, const std::vector<Polygon>& openings,
               const Inscription& words);

/// Letters go this much below and above their baseline, in type sizes.
inline constexpr double kBelowBaseline = 0.25;
inline constexpr double kAboveBaseline = 0.95;

/// Words take this much of their room, at the most: those that touch a cut look torn.
inline constexpr double kWordsFill = 0.92;

}  // namespace creasewright
