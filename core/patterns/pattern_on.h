#pragma once

#include <vector>

#include "geometry/plane_map.h"
#include "geometry/region.h"
#include "patterns/paper_pattern.h"

namespace creasewright {

/// What is printed in one colour, over what comes before it.
struct Inked {
  Colour colour;
  Region shape;
};

/// More repeats than these on one outline are no pattern to the eye, and are shown in their mean
/// colour.
inline constexpr double kMostRepeats = 20'000;

/// A patterned paper in an outline: first its ground, then its inks. `paper` maps the paper (mm, x
/// right and y up as one looks at its print, before the pattern's own turn) into the plane of the
/// outline; a motif lies about its origin. Shapes are cut off exactly at the outline, to 1 nm.
/// Empty where the pattern is not known.
std::vector<Inked> patternOn(const Region& outline, const PaperPattern& pattern,
                             const PlaneMap& paper = {});

}  // namespace creasewright
