#pragma once

#include <vector>

#include "net/flat_net.h"

namespace creasewright {

/// What lies no farther apart is on one line or at one place, mm: more than any rounding.
inline constexpr double kSamePlace = 1e-4;

/// The cuts of a sheet as strokes of the knife, blank coordinates, mm.
struct CutStrokes {
  std::vector<Segment> straight;   ///< touching cuts on one line are one
  std::vector<Polyline> curves;    ///< open, at least three pieces that turn softly
  std::vector<Polyline> slits;     ///< as the net has them
  std::vector<Polyline> openings;  ///< closed: the first point repeated
};

/// Everything to cut but the blank's own border.
CutStrokes cutStrokes(const FlatNet& flat);

}  // namespace creasewright
