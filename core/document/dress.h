#pragma once

#include "document/build_extras.h"

namespace creasewright {

/// What a kind makes of an extra on a host. Errors: those of ExtraKind::build and ExtraUnknown.
Result<ExtraParts> partsOf(const Extra& extra, const Host& host);

/// Makes the extras of a design, hosts before what lies on them, and adds their pieces and ribbons
/// in the order of the design. `box` is the bare box; nothing can go round `inHalves`.
void dress(const CutWindows& windows, const Host& box, bool inHalves, BuiltDesign& built);

}  // namespace creasewright
