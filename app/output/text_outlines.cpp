#include "output/text_outlines.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>
#include <QTransform>

#include "bridge/text.h"

namespace creasewright {

namespace {

constexpr int kOutlinePixels = 256;  // glyphs are taken at this size: curves stay smooth

QPainterPath glyphs(const TextItem& item, const QString& words) {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(kOutlinePixels);
  font.setBold(item.bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  const double width = QFontMetricsF(font).horizontalAdvance(words);
  const double shift = item.anchor == Anchor::Left     ? 0
                       : item.anchor == Anchor::Centre ? -width / 2
                                                       : -width;
  QPainterPath path;
  path.addText(QPointF(shift, 0), font, words);
  return path;
}

}  // namespace

Drawing withOutlinedWords(Drawing drawing, const Wording& wording, bool filled) {
  for (const TextItem& item : drawing.texts) {
    QTransform place;
    place.translate(item.at.x, item.at.y);
    place.rotate(item.turnDegrees);
    const double size = item.height / kOutlinePixels;
    place.scale(size, -size);
    PathItem letters{
        .role = item.role, .rings = {}, .closed = true, .filled = filled, .like = item.like};
    for (const QPolygonF& ring : glyphs(item, text(wording(item.label))).toSubpathPolygons(place)) {
      Polygon points;
      for (const QPointF& p : ring) points.push_back({p.x(), p.y()});
      if (points.size() > 1 && points.front() == points.back()) points.pop_back();
      if (points.size() > 2) letters.rings.push_back(std::move(points));
    }
    if (!letters.rings.empty()) drawing.paths.push_back(std::move(letters));
  }
  drawing.texts.clear();
  return drawing;
}

}  // namespace creasewright
