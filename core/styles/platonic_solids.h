#pragma once

#include "styles/style.h"

namespace creasewright {

Style tetrahedron();
Style cube();
Style octahedron();
Style dodecahedron();
Style icosahedron();

}  // namespace creasewright
