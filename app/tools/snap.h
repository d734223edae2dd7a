#pragma once

#include <optional>
#include <vector>

#include "document/build.h"
#include "units/tool_grid.h"

namespace creasewright {

/// What the pointer has caught on the sheet.
enum class SnapKind { Corner, Crossing, Middle, Line, Grid, Nothing };

struct Snap {
  Point at;  ///< blank coordinates, mm
  SnapKind kind = SnapKind::Nothing;
  std::optional<Segment> line;  ///< of a Line
};

/// What lies within `reach` mm of a place on the blank: the nearest corner of a cut or end of a
/// fold, or crossing of two of them, else the middle of one, else the nearest place on one, else
/// the nearest place of the grid as far as it lies on the blank. Elsewhere the place itself.
Snap snapAt(const BuiltPiece& piece, Point at, double reach, ToolGrid grid);

/// The distance between two things that were caught: between points; from a point to a line,
/// square to it; between two lines that run alike; else their angle.
struct Measurement {
  Point from;  ///< where the measured way begins and ends, mm
  Point to;
  double distance = 0;            ///< mm
  std::optional<double> degrees;  ///< between two lines that do not run alike: 0..90
};
Measurement measureBetween(const Snap& first, const Snap& second);

}  // namespace creasewright
