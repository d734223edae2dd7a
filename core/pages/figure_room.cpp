#include "pages/figure_room.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "drawing/set_words.h"
#include "geometry/fewer_points.h"

namespace creasewright {
namespace {

/// Of a pattern's shapes, what a printer of 600 dpi shows.
void drawFewer(PathItem& item) {
  constexpr double kUnseen = 0.02;  // mm
  for (Polygon& ring : item.rings) ring = fewerPoints(ring, kUnseen);
  std::erase_if(item.rings, [](const Polygon& ring) { return ring.empty(); });
}

}  // namespace

double scaleInto(double width, double height, const FigureRoom& room) {
  return std::min(room.width / width, room.height / height);
}

Drawing fittedInto(Drawing drawing, const FigureRoom& room) {
  if (drawing.width <= 0 || drawing.height <= 0) return drawing;
  const double scale = scaleInto(drawing.width, drawing.height, room);
  for (PathItem& item : drawing.paths) {
    carry(item, [scale](Point p) { return p * scale; });
    if (item.printed) drawFewer(item);
  }
  for (TextItem& text : drawing.texts) {
    carry(text, PlaneMap{{}, {scale, 0}, {0, scale}});
    if (text.plane) continue;
    text.height *= scale;
    text.column *= scale;
    if (text.arc) text.arc->radius *= scale;
  }
  for (PictureItem& picture : drawing.pictures) {
    picture.at = picture.at * scale;
    picture.width *= scale;
    picture.height *= scale;
  }
  drawing.width *= scale;
  drawing.height *= scale;
  return drawing;
}

}  // namespace creasewright
