#pragma once

#include "document/build.h"

namespace creasewright {

/// `paperWarnings` for the person's own sheets and the paper in their printer.
Problems ownPaperWarnings(const BuiltDesign& built);

}  // namespace creasewright
