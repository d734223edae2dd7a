#pragma once

#include <QPainter>
#include <QStringList>

#include "folding/surfaces/scene.h"
#include "net/net.h"

namespace creasewright {

/// Paints the picture of a folded net into `room`, as large as it fits times `zoom`; panels named
/// in `highlight` are tinted.
void paintFold(QPainter& painter, const FoldPicture& picture, double reach, const Net& net,
               const QRectF& room, double zoom, const QStringList& highlight);

}  // namespace creasewright
