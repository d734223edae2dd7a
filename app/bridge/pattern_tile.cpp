#include "bridge/pattern_tile.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <list>

#include "bridge/decode_picture.h"
#include "bridge/paint_drawing.h"
#include "pages/paper_print.h"
#include "patterns/pattern.h"
#include "patterns/pattern_on.h"

namespace creasewright {

namespace {

QPainterPath inkPath(const Region& shape) {
  QPainterPath path;
  const auto add = [&](const Polygon& ring) {
    QPolygonF points;
    for (const Point& p : ring) points << QPointF(p.x, p.y);
    path.addPolygon(points);
    path.closeSubpath();
  };
  for (const Area& area : shape) {
    add(area.outer);
    for (const Polygon& hole : area.holes) add(hole);
  }
  return path;
}

PatternTile pictureTile(const PaperPattern& paper, double pixelsPerMm) {
  constexpr int kFewest = 32;
  PatternTile tile;
  const double wide = paper.scale.mm();
  tile.image = keptPicture(paper.picture->file,
                           std::clamp(static_cast<int>(wide * pixelsPerMm), kFewest, 768));
  const auto picture = pictureOn(paper, {});
  if (tile.image.isNull() || !picture) {
    tile.image = QImage(1, 1, QImage::Format_RGB32);
    tile.image.fill(toColor(meanColour(paper)));
    return tile;
  }
  tile.toPaper = QTransform(1.0 / tile.image.width(), 0, 0, -1.0 / tile.image.height(), 0, 1) *
                 toTransform(picture->place);
  return tile;
}

PatternTile makeTile(const PaperPattern& paper, double pixelsPerMm) {
  constexpr int kMost = 768;
  if (paper.picture) return pictureTile(paper, pixelsPerMm);
  const PatternKind* pattern = patternCalled(paper.id);
  const double wide = paper.scale.mm();
  const double high = wide * (pattern == nullptr ? 1 : pattern->height);
  const auto pixels = [&](double mm) {
    return std::clamp(static_cast<int>(std::lround(mm * pixelsPerMm)), 2, kMost);
  };
  PatternTile tile;
  tile.image = QImage(pixels(wide), pixels(high), QImage::Format_RGB32);
  QPainter painter(&tile.image);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(0, tile.image.height());
  painter.scale(tile.image.width() / wide, -tile.image.height() / high);
  // A little more than the repeat, so that no edge of it is blended with nothing.
  const double over = wide / 8;
  const Region repeat{
      {{{-over, -over}, {wide + over, -over}, {wide + over, high + over}, {-over, high + over}},
       {}}};
  PaperPattern straight = paper;
  straight.turn = 0;
  for (const Inked& ink : patternOn(repeat, straight))
    painter.fillPath(inkPath(ink.shape), toColor(ink.colour));
  tile.toPaper.rotate(paper.turn);
  tile.toPaper.translate(0, high);
  tile.toPaper.scale(wide / tile.image.width(), -high / tile.image.height());
  return tile;
}

}  // namespace

const PatternTile& patternTile(const PaperPattern& paper, double pixelsPerMm) {
  struct Kept {
    PaperPattern paper;
    int fineness;
    PatternTile tile;
  };
  constexpr std::size_t kKept = 32;
  thread_local std::list<Kept> kept;
  // In steps of half an octave, so that a zoom does not draw a new one for each of its moments.
  const int fineness = static_cast<int>(std::ceil(2 * std::log2(std::max(pixelsPerMm, 0.01))));
  const auto known = std::ranges::find_if(
      kept, [&](const Kept& one) { return one.fineness == fineness && one.paper == paper; });
  if (known != kept.end()) {
    kept.splice(kept.begin(), kept, known);
  } else {
    kept.push_front({paper, fineness, makeTile(paper, std::exp2(fineness / 2.0))});
    if (kept.size() > kKept) kept.pop_back();
  }
  return kept.front().tile;
}

QTransform toTransform(const PlaneMap& map) {
  return {map.x.x, map.x.y, map.y.x, map.y.y, map.origin.x, map.origin.y};
}

}  // namespace creasewright
