#include "styles/registry.h"

#include <algorithm>
#include <array>

#include "styles/library.h"

namespace creasewright {

std::span<const Style> styles() {
  static const std::array all{
      // Boxes
      framedTray(),
      straightTuckBox(),
      reverseTuckBox(),
      hangTabTuckBox(),
      snapLockBottomBox(),
      crashLockBottomBox(),
      twoPieceBox(),
      hingedLidBox(),
      drawerBox(),
      rolledWallTray(),
      partitionInsert(),
      platformInsert(),
      wedgeBox(),
      pitchedRoofBox(),
      explodingBox(),
      // Bands and wraps
      openSleeve(),
      bellyBand(),
      bookWrap(),
      envelope(),
      cardWallet(),
      // Bags and pouches
      gussetedBag(),
      crossedSeamPouch(),
      pillowBox(),
      treatScoop(),
      // Prisms and pyramids
      prismBox(),
      petalPrism(),
      taperedCup(),
      pyramidBox(),
      gableBox(),
      milkCartonTopBox(),
      // Ornaments
      tetrahedron(),
      cube(),
      octahedron(),
      dodecahedron(),
      icosahedron(),
  };
  return all;
}

Result<const Style*> findStyle(std::string_view id) {
  const auto found = std::ranges::find(styles(), id, &Style::id);
  if (found == styles().end()) return Problem{ProblemCode::UnknownStyle, {}, {std::string(id)}};
  return &*found;
}

}  // namespace creasewright
