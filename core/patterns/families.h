#pragma once

#include "patterns/pattern.h"

namespace creasewright {

// bands.cpp
PatternKind stripes();
PatternKind gingham();
PatternKind tartan();
PatternKind chevron();
PatternKind waves();
// dotted.cpp
PatternKind pinDots();
PatternKind dots();
// woven.cpp
PatternKind herringbone();
PatternKind lattice();
PatternKind scallops();
// strewn.cpp
PatternKind confetti();
PatternKind stars();
PatternKind snow();
PatternKind terrazzo();
// plants.cpp
PatternKind leaves();
PatternKind sprigs();

}  // namespace creasewright
