#pragma once

#include <QImage>
#include <QTransform>

#include "geometry/plane_map.h"
#include "patterns/paper_pattern.h"

namespace creasewright {

/// One repeat of a paper as pixels, for brushes: what comes next begins where it ends.
struct PatternTile {
  QImage image;
  QTransform toPaper;  ///< its pixels to the paper's millimetres, y up, turned as the paper is
};

/// A tile of about so many pixels to a millimetre, at most 768 wide or high. The last ones are
/// kept. Only for the window's own thread.
const PatternTile& patternTile(const PaperPattern& paper, double pixelsPerMm);

QTransform toTransform(const PlaneMap& map);

}  // namespace creasewright
