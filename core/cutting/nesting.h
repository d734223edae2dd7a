#pragma once

#include <vector>

#include "base/result.h"
#include "geometry/region.h"
#include "units/length.h"

namespace creasewright {

/// A flat net to cut on a machine: its outline from (0, 0) to (width, height), mm.
struct NestPart {
  std::string name;
  Polygon outline;
  double width = 0;
  double height = 0;
  int quantity = 1;
  bool mayTurn = true;         ///< by quarters; false where grain or pattern forbids it
  std::vector<int> ways = {};  ///< else the quarters it may be turned by; empty = mayTurn says it
};

/// A part on a mat: turned left by so many quarters, then its bounds' lower left corner moved to
/// `at`.
struct NestedPart {
  int part = 0;
  int quarters = 0;
  Point at;
};

/// Mats cut alike.
struct MatLayout {
  int count = 1;
  std::vector<NestedPart> parts;
};

struct NestOptions {
  double gap = 2;   ///< mm between parts, and to the mat's edge
  double cell = 1;  ///< mm of the raster; smaller packs closer and takes longer
};

/// Packs real outlines, several nets to a mat, in six orders (area, sides, perimeter of the
/// bounds), each as low and then as far left as it goes in any quarter turn, as near to the corner,
/// or where it touches most; the packing of fewest mats is taken, and none is looked for that
/// leastMats() rules out or after a fixed amount of work. Concave nets reach into one another. A
/// raster of cells decides: every cell that a part or its gap touches is taken, so parts never come
/// closer than the gap. No claim that fewer mats could not do. Errors: NoDemand, BlankTooLarge
/// (where = part).
Result<std::vector<MatLayout>> nest(const std::vector<NestPart>& parts, Length matWidth,
                                    Length matHeight, const NestOptions& options = {});

/// What no packing takes less than, by the parts' area and what a mat has of it inside its gap.
int leastMats(const std::vector<NestPart>& parts, Length matWidth, Length matHeight,
              const NestOptions& options = {});

/// The outline of a part where a layout has it.
Polygon nestedOutline(const NestPart& part, const NestedPart& nested);

}  // namespace creasewright
