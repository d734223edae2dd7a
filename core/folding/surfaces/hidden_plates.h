#pragma once

#include "folding/surfaces/scene_parts.h"
#include "folding/surfaces/view.h"

namespace creasewright {

/// Takes out of a scene the plates that one convex panel alone hides from the camera, with the
/// edges that lie on them: the product under a closed lid need not be cut up. The picture stays the
/// same. Depths that differ by no more than `tolerance` mm count as alike; such plates stay.
void leaveOutHidden(SceneParts& parts, const Camera& camera, double tolerance);

}  // namespace creasewright
