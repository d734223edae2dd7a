#pragma once

#include "patterns/pattern.h"

namespace creasewright {

// bands.cpp
Pattern stripes();
Pattern gingham();
Pattern tartan();
Pattern chevron();
Pattern waves();
// dotted.cpp
Pattern pinDots();
Pattern dots();
// woven.cpp
Pattern herringbone();
Pattern lattice();
Pattern scallops();
// strewn.cpp
Pattern confetti();
Pattern stars();
Pattern snow();
Pattern terrazzo();
// plants.cpp
Pattern leaves();
Pattern sprigs();

}  // namespace creasewright
