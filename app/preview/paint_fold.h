#pragma once

#include <QImage>
#include <QRectF>
#include <QStringList>
#include <QTransform>
#include <vector>

#include "folding/surfaces/scene.h"
#include "pages/dressing.h"

namespace creasewright {

/// Where the picture of a folded net stands on screen: in the middle of `room`, as large as it fits
/// times `zoom`; `reach` is how wide it is at most, however it is turned (mm).
struct FoldPlace {
  double reach = 1;
  QRectF room;
  double zoom = 1;
};

/// Picture coordinates (mm, y up) to pixels of the screen.
QTransform placing(const Bounds& extent, const FoldPlace& where);

/// What is lit in it: panels by id, or lines in picture coordinates (mm), of which the visible
/// parts are drawn.
struct FoldLight {
  int piece = -1;  ///< whose panels; -1 = whichever has them
  QStringList panels;
  std::vector<Segment> lines;
};

/// `canvas`: 32 bits to a pixel, premultiplied, with the screen's device pixel ratio.
void paintFold(QImage& canvas, const FoldPicture& picture, const FoldPlace& place,
               const Dressed& shown, const FoldLight& light);

/// Index into the net's panels of the face that is seen at `pixel`; -1 for none, or a solid.
int panelSeenAt(const FoldPicture& picture, const FoldPlace& place, QPointF pixel);

}  // namespace creasewright
