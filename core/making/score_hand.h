#pragma once

#include "making/score_plan.h"

namespace creasewright {

/// The hand that holds the tool. The other one holds the sheet against the stop, which lies on the
/// tool's other side: at the left for the right hand, at the right for the left hand.
enum class Hand { Right, Left };

/// The score plan for a hand. For the left hand it is planned on the sheet as it looks in a mirror,
/// and read from the other edges: the same lines, with as many settings and turns of the sheet; a
/// line that the right hand reads from the left edge alone is read from the right edge.
ScorePlan planScoresFor(Hand hand, const Net& net, const FlatNet& flat, ToolGrid grid,
                        Length board = {});

/// Left for right; bottom and top stay.
SheetSide inMirror(SheetSide side);

}  // namespace creasewright
