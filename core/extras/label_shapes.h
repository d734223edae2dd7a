#pragma once

#include <vector>

#include "base/worded.h"
#include "geometry/polygon.h"

namespace creasewright {

/// In the order of `shapeWords`, which files count by: new ones come last.
enum class LabelShape {
  Rectangle,
  Circle,
  Oval,
  Scallop,
  Rounded,
  ScallopedCircle,
  ScallopedRectangle,
  Banner,
  Tag,
  Heart,
  Star,
  Arch,
  Ticket,
  Hexagon
};

std::vector<Worded> shapeWords();

/// Whether width and height are always the same.
bool isRound(LabelShape shape);

/// Whether its edge has lobes.
bool isWavy(LabelShape shape);

/// Counter-clockwise, its bounds from (0, 0) to (width, height), mm.
Polygon labelOutline(LabelShape shape, double width, double height);

/// mm from tip to tip of a scalloped edge.
inline constexpr double kWave = 8;

}  // namespace creasewright
