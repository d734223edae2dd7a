#pragma once

#include "document/build.h"

namespace creasewright {

/// TextCovered for each line of words that card or ribbon of an extra lies over on the closed gift:
/// a layer above it, a label, what goes round, a bow. Each line and what covers it is told once.
Problems coveredWords(const BuiltDesign& built);

}  // namespace creasewright
