#pragma once

#include "folding/surfaces/scene_parts.h"
#include "folding/surfaces/view.h"

namespace creasewright {

/// Takes out of a scene the plates that a few large panels hide from the camera, with the edges
/// that only such plates have: the product under a closed lid need not be cut up, nor the far
/// walls. The picture stays the same, up to `tolerance` mm of depth and 0.01 micrometres of width.
void leaveOutHidden(SceneParts& parts, const Camera& camera, double tolerance);

}  // namespace creasewright
