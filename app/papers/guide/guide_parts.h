#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "guide/guide.h"
#include "pages/figure_room.h"

namespace creasewright {

struct BuiltDesign;

/// A picture that several steps at one sheet share.
enum class MapKind { None, Scores, Cuts };

/// Steps that stand together: those of one map, or a single one.
struct GuidePart {
  std::size_t first = 0;
  std::size_t count = 1;
  MapKind map = MapKind::None;
};

/// All steps of a guide in parts, in order.
std::vector<GuidePart> guideParts(const Guide& guide);

/// Whether any of the steps from `from` to before `to` scores.
bool anyScores(const std::vector<Step>& steps, std::size_t from, std::size_t to);

/// The map of a part that has one.
Drawing partMap(const BuiltDesign& built, const Guide& guide, const GuidePart& part,
                const FigureRoom& room, const Wording& wording);

}  // namespace creasewright
