#pragma once

#include <QImage>
#include <QStringList>
#include <QTransform>
#include <vector>

#include "folding/surfaces/scene.h"
#include "pages/dressing.h"

namespace creasewright {

/// What is lit in a picture: panels by id, or lines in picture coordinates (mm), of which the
/// visible parts are drawn.
struct FoldLight {
  int piece = -1;  ///< whose panels; -1 = whichever has them
  QStringList panels;
  std::vector<Segment> lines;
};

/// `canvas`: 32 bits to a pixel, premultiplied, with the screen's device pixel ratio; `place`:
/// picture coordinates (mm, y up) to pixels of the screen.
void paintFold(QImage& canvas, const FoldPicture& picture, const QTransform& place,
               const Dressed& shown, const FoldLight& light);

/// Index into the net's panels of the face that is seen at `pixel`; -1 for none, or a solid.
int panelSeenAt(const FoldPicture& picture, const QTransform& place, QPointF pixel);

}  // namespace creasewright
