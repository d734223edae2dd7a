#include "panels/style_picture.h"

#include <QPainter>

#include "folding/upright.h"
#include "preview/paint_fold.h"

namespace creasewright {

QPixmap foldedPicture(const Design& design, QSize size, double devicePixelRatio) {
  QPixmap pixmap(size * devicePixelRatio);
  pixmap.setDevicePixelRatio(devicePixelRatio);
  pixmap.fill(Qt::transparent);
  const auto built = build(design);
  if (!built || built->pieces.empty()) {
    return pixmap;
  }
  const BuiltPiece& piece = built->pieces.front();
  const FoldPicture picture =
      drawFolded(piece.piece.net, piece.folded, standardView(), uprightOf(piece.piece));
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  paintFold(painter, picture, 0, piece.piece.net, QRectF(QPointF(), size).adjusted(2, 2, -2, -2), 1,
            {});
  return pixmap;
}

}  // namespace creasewright
