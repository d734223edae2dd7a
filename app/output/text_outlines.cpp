#include "output/text_outlines.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainterPath>
#include <QTransform>

#include "bridge/pattern_tile.h"
#include "bridge/text.h"
#include "bridge/typefaces.h"
#include "drawing/set_words.h"

namespace creasewright {

namespace {

constexpr int kOutlinePixels = 256;  // glyphs are taken at this size: curves stay smooth

QPainterPath glyphs(const TextItem& item, const WordsRun& run) {
  const QFont font = fontOf(item.face, item.bold, kOutlinePixels);
  const QString words = text(run.words);
  const double width = QFontMetricsF(font).horizontalAdvance(words);
  const double shift = run.anchor == Anchor::Left     ? 0
                       : run.anchor == Anchor::Centre ? -width / 2
                                                      : -width;
  const double size = item.height / kOutlinePixels;
  const double closer =
      run.longest > 0 && width * size > run.longest ? run.longest / (width * size) : 1;
  QPainterPath path;
  path.addText(QPointF(shift, 0), font, words);
  return QTransform::fromScale(size * closer, -size).map(path);
}

void addRings(const QList<QPolygonF>& rings, PathItem& letters) {
  for (const QPolygonF& ring : rings) {
    Polygon points;
    for (const QPointF& p : ring) points.push_back({p.x(), p.y()});
    if (points.size() > 1 && points.front() == points.back()) points.pop_back();
    if (points.size() > 2) letters.rings.push_back(std::move(points));
  }
}

}  // namespace

Drawing withOutlinedWords(Drawing drawing, const Wording& wording, bool filled) {
  for (const TextItem& item : drawing.texts) {
    PathItem letters{
        .role = item.role, .rings = {}, .closed = true, .filled = filled, .like = item.like};
    for (const WordsRun& run : wordsRuns(item, wording(item.label)))
      addRings(glyphs(item, run).toSubpathPolygons(toTransform(run.place)), letters);
    if (!letters.rings.empty()) drawing.paths.push_back(std::move(letters));
  }
  drawing.texts.clear();
  return drawing;
}

}  // namespace creasewright
