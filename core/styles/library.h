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
Style partitionInsert();
Style platformInsert();
Style wedgeBox();
Style pitchedRoofBox();
Style explodingBox();
// Bands and wraps
Style openSleeve();
Style bellyBand();
Style bookWrap();
Style envelope();
Style cardWallet();
// Bags and pouches
Style gussetedBag();
Style crossedSeamPouch();
Style pillowBox();
Style treatScoop();
// Prisms and pyramids
Style prismBox();
Style petalPrism();
Style taperedCup();
Style pyramidBox();
Style gableBox();
Style milkCartonTopBox();
// Ornaments
Style tetrahedron();
Style cube();
Style octahedron();
Style dodecahedron();
Style icosahedron();

}  // namespace creasewright
