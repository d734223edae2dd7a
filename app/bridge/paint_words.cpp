#include "bridge/paint_words.h"

#include <QPainterPath>

#include "bridge/pattern_tile.h"
#include "bridge/text.h"
#include "bridge/typefaces.h"
#include "drawing/set_words.h"

namespace creasewright {

namespace {

/// Glyphs are laid out at this size and scaled, so that a font's rounding to pixels does not show.
constexpr int kGlyphPixels = 64;

QPainterPath seenParts(const std::vector<Polygon>& rings) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  for (const Polygon& ring : rings) {
    QPolygonF corners;
    for (const Point& p : ring) corners << QPointF(p.x, p.y);
    path.addPolygon(corners);
    path.closeSubpath();
  }
  return path;
}

}  // namespace

const WordsPainter::Face& WordsPainter::face(Typeface face, bool bold) {
  const auto known = faces_.find({face, bold});
  if (known != faces_.end()) return known->second;
  const QFont font = fontOf(face, bold, kGlyphPixels);
  return faces_.emplace(std::pair{face, bold}, Face{font, QFontMetricsF(font, device_)})
      .first->second;
}

void WordsPainter::paint(QPainter& painter, const TextItem& item, const std::string& words,
                         const QColor& ink) {
  const Face& type = face(item.face, item.bold);
  const double size = item.height / kGlyphPixels;
  painter.save();
  if (!item.shown.empty()) painter.setClipPath(seenParts(item.shown), Qt::IntersectClip);
  painter.setFont(type.font);
  painter.setPen(ink);
  for (const WordsRun& run : wordsRuns(item, words)) {
    const QString line = text(run.words);
    const bool measured = run.anchor != Anchor::Left || run.longest > 0;
    const double width = measured ? type.metrics.horizontalAdvance(line) : 0;
    const double shift = run.anchor == Anchor::Left     ? 0
                         : run.anchor == Anchor::Centre ? -width / 2
                                                        : -width;
    // What another face takes more than the one that was measured.
    const double closer =
        run.longest > 0 && width * size > run.longest ? run.longest / (width * size) : 1;
    painter.save();
    painter.setTransform(toTransform(run.place), true);
    painter.scale(size * closer, -size);
    painter.drawText(QPointF(shift, 0), line);
    painter.restore();
  }
  painter.restore();
}

}  // namespace creasewright
