#pragma once

#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// Where a tag hangs by its hole on a ribbon round the box: its layers' panels in the frame of the
/// box's first piece, before an upright side along which the ribbon runs, or else lying by the
/// crossing on top; the largest layer is the lowest. Nothing where no side is as large as the tag.
std::vector<Transform> hangingOn(const RibbonNeed& ribbon, const std::vector<const Panel*>& layers);

}  // namespace creasewright
