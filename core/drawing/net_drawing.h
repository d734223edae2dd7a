#pragma once

#include <vector>

#include "drawing/drawing.h"
#include "net/flat_net.h"

namespace creasewright {

struct NetDrawingOptions {
  double margin = 5;  ///< mm of room around everything drawn
  bool sheet = true;  ///< the blank as a filled rectangle
  bool waste = true;  ///< hatch what is cut away
  bool dimensions =
      true;            ///< score distances below and at the left, the blank's size above and right
  bool names = false;  ///< a panel's id in its middle, where it has room
  double textHeight = 2.8;               ///< mm
  std::vector<Polygon> glueBehind = {};  ///< areas for adhesive on the other face
};

/// A net as a drawing, and where the blank's lower left corner lies in it.
struct NetDrawing {
  Drawing drawing;
  Point origin;
};

/// Draws a flat net: cuts as whole chains, creases by direction and kind, waste and glue as
/// hatching. `glue` holds areas for adhesive on the drawn face in blank coordinates. Dimension
/// labels carry the code `length`.
NetDrawing drawNet(const Net& net, const FlatNet& flat, const std::vector<Polygon>& glue,
                   const NetDrawingOptions& options = {});

/// Only the lines and hatching in blank coordinates, without margin and dimensions.
Drawing drawNetLines(const Net& net, const FlatNet& flat, const std::vector<Polygon>& glue,
                     const NetDrawingOptions& options = {});

}  // namespace creasewright
