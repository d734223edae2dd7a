#pragma once

#include <vector>

#include "making/fold_plan.h"
#include "making/glue_plan.h"
#include "units/tool_grid.h"

namespace creasewright {

/// Adhesive for one area of the glue plan.
struct GlueStrip {
  int area = 0;    ///< index into the glue plan
  Length width;    ///< of the tape; zero = liquid glue, no tape fits
  Segment middle;  ///< middle line of the tape, blank coordinates; the area's length for glue
  int stage = 0;   ///< bare it just before this stage (1 = first)
  [[nodiscard]] bool liquid() const { return width == Length(); }
};

struct TapeUse {
  Length width;
  Length length;  ///< per piece
  int strips = 0;
};

struct AdhesivePlan {
  std::vector<GlueStrip> strips;
  std::vector<TapeUse> tapes;  ///< by width, ascending
  int liquidSpots = 0;
};

/// The widest tape that fits each area of the glue plan (which keeps 1 mm to crease and edge) and
/// is at least as long as wide: 3, 6, 9, 12 mm, or 1/8, 1/4, 3/8, 1/2 in on an inch grid (common
/// practice, no published source). Areas shorter than the tape is wide, or narrower than all, take
/// liquid glue.
AdhesivePlan planAdhesive(const Net& net, const std::vector<GlueArea>& areas, const FoldPlan& folds,
                          ToolGrid grid);

}  // namespace creasewright
