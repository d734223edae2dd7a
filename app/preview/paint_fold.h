#pragma once

#include <QImage>
#include <QPainter>
#include <QStringList>
#include <vector>

#include "folding/surfaces/ground_shadow.h"
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

/// What is lit in it: panels by id, or lines in picture coordinates (mm), of which the visible
/// parts are drawn.
struct FoldLight {
  int piece = -1;  ///< whose panels; -1 = whichever has them
  QStringList panels;
  std::vector<Segment> lines;
};

/// The shadow under it, drawn first.
struct FoldShadow {
  QImage image;
  Bounds extent;  ///< as of FoldPicture
};
FoldShadow foldShadow(const GroundShadow& shadow);
void paintShadow(QPainter& painter, const FoldShadow& shadow, const FoldPicture& picture,
                 const FoldPlace& place);

void paintFold(QPainter& painter, const FoldPicture& picture, const FoldPlace& place,
               const Dressed& shown, const FoldLight& light);

/// Index into the net's panels of the face that is seen at `pixel`; -1 for none, or a solid.
int panelSeenAt(const FoldPicture& picture, const FoldPlace& place, QPointF pixel);

}  // namespace creasewright
