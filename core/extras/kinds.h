#pragma once

#include "extras/extra_kind.h"

namespace creasewright {

// Kinds of extras, a function each; extra_kind.cpp lists them.
ExtraKind bandExtra();
ExtraKind sleeveExtra();
ExtraKind matsExtra();
ExtraKind photoMatsExtra();
ExtraKind labelExtra();
ExtraKind tagExtra();
ExtraKind windowExtra();
ExtraKind platformExtra();
ExtraKind partitionExtra();
ExtraKind slipExtra();
ExtraKind ribbonExtra();
ExtraKind bowExtra();
ExtraKind ribbonPullExtra();

}  // namespace creasewright
