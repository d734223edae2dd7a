#pragma once

#include "document/build.h"

namespace creasewright {

/// The design without one of its extras. What was put onto that lies on what is beneath on the same
/// side; where nothing is, it keeps the name of the face that is gone, so that it is told as
/// ExtraFaceUnknown until it gets another place.
Design withoutExtra(const BuiltDesign& built, int gone);

}  // namespace creasewright
