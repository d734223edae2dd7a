#pragma once

#include <optional>
#include <vector>

#include "base/result.h"
#include "pages/page_frame.h"
#include "pages/tiling.h"

namespace creasewright {

/// A part, or one tile of it, on a page.
struct LaidPart {
  std::size_t part = 0;
  bool turned = false;              ///< left by a quarter
  Bounds window;                    ///< of the (turned) blank's plane
  Point at;                         ///< where the window's lower left corner lies on the page
  std::optional<std::size_t> tile;  ///< into the part's tiling
};

struct LaidPage {
  PageFrame frame;
  std::vector<LaidPart> parts;
};

/// Where all parts of a design lie in true size.
struct TemplateLayout {
  std::vector<LaidPage> pages;
  std::vector<std::optional<Tiling>> tilings;  ///< for each part; nothing where it lies whole
  bool roomiest = false;  ///< every page keeps room for all that must stand on it
};

/// Room that the foot of a page takes, mm.
struct FootRoom {
  double legend = 0;  ///< above the bars
  double hints = 0;   ///< beside them
};

/// Layouts of the parts, the best first: the fewest pages, then the most room kept for bars, head,
/// foot and between parts (5 mm at least). Whoever furnishes the pages takes the first on which all
/// finds room. A part that fits no page is tiled, the others lie together,
/// also beside tiles. Errors: MarginTooLarge, TooManyTiles.
Result<std::vector<TemplateLayout>> layOutTemplate(const std::vector<TiledSheet>& parts,
                                                   const PageSetup& setup, const FootRoom& foot);

}  // namespace creasewright
