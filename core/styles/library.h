#pragma once

#include "styles/style.h"

namespace creasewright {

// One maker per style, each defined in the file of its name; the registry calls every one once.
// Boxes
Style framedTray();
Style straightTuckBox();
Style reverseTuckBox();
Style hangTabTuckBox();
Style snapLockBottomBox();
Style crashLockBottomBox();
Style twoPieceBox();
Style hingedLidBox();
Style drawerBox();
Style rolledWallTray();
// Bands and wraps
Style openSleeve();
Style bellyBand();
// Prisms and pyramids
Style prismBox();
Style petalPrism();
Style taperedCup();
Style pyramidBox();
Style gableBox();
// Ornaments
Style tetrahedron();
Style cube();
Style octahedron();
Style dodecahedron();
Style icosahedron();

}  // namespace creasewright
