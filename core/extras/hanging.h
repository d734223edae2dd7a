#pragma once

#include <optional>
#include <vector>

#include "extras/extra_kind.h"

namespace creasewright {

/// Where a tag hangs by its hole on a ribbon round the box: its layers' panels in the frame of the
/// box's first piece, before an upright side along which the ribbon runs, or else lying by the
/// crossing on top, over whose edge it may reach where that is flat; the largest layer is the
/// lowest. Nothing where it finds no room.
std::vector<Transform> hangingOn(const RibbonNeed& ribbon, const std::vector<const Panel*>& layers);

/// How high a tag of such a form may be, its lowest layer, to have its place there; nothing where
/// none has. mm
std::optional<double> tallestOn(const RibbonNeed& ribbon, const std::vector<const Panel*>& layers);

}  // namespace creasewright
