#include "styles/registry.h"

#include <algorithm>
#include <array>

#include "styles/belly_band.h"
#include "styles/blank_sheet.h"
#include "styles/book_wrap.h"
#include "styles/card_wallet.h"
#include "styles/crash_lock_bottom_box.h"
#include "styles/crossed_seam_pouch.h"
#include "styles/drawer_box.h"
#include "styles/envelope.h"
#include "styles/exploding_box.h"
#include "styles/framed_tray.h"
#include "styles/gable_box.h"
#include "styles/gusseted_bag.h"
#include "styles/hang_tab_tuck_box.h"
#include "styles/hinged_lid_box.h"
#include "styles/milk_carton_top_box.h"
#include "styles/open_sleeve.h"
#include "styles/partition_insert.h"
#include "styles/petal_prism.h"
#include "styles/pillow_box.h"
#include "styles/pitched_roof_box.h"
#include "styles/platform_insert.h"
#include "styles/platonic_solids.h"
#include "styles/prism_box.h"
#include "styles/pyramid_box.h"
#include "styles/reverse_tuck_box.h"
#include "styles/rolled_wall_tray.h"
#include "styles/snap_lock_bottom_box.h"
#include "styles/straight_tuck_box.h"
#include "styles/tapered_cup.h"
#include "styles/treat_scoop.h"
#include "styles/two_piece_box.h"
#include "styles/wedge_box.h"

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
  if (id == blankSheet().id) return &blankSheet();
  const auto found = std::ranges::find(styles(), id, &Style::id);
  if (found == styles().end()) return Problem{ProblemCode::UnknownStyle, {}, {std::string(id)}};
  return &*found;
}

}  // namespace creasewright
