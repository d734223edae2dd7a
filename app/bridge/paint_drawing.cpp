#include "bridge/paint_drawing.h"

#include <QPainterPath>
#include <algorithm>
#include <optional>
#include <string_view>

#include "base/shade_png.h"
#include "bridge/decode_picture.h"
#include "bridge/paint_words.h"
#include "bridge/picture_fill.h"
#include "drawing/contrast.h"
#include "drawing/in_black.h"
#include "geometry/polygon.h"

namespace creasewright {

namespace {

QPointF toPoint(Point p) { return {p.x, p.y}; }

QPainterPath outline(const PathItem& item) {
  QPainterPath path;
  path.setFillRule(Qt::OddEvenFill);
  std::size_t points = 0;
  for (const Polygon& ring : item.rings) points += ring.size() + 1;
  path.reserve(static_cast<int>(points));
  for (const Polygon& ring : item.rings) {
    if (ring.size() < 2) continue;
    path.moveTo(toPoint(ring.front()));
    for (auto p = ring.begin() + 1; p != ring.end(); ++p) path.lineTo(toPoint(*p));
    if (item.closed) path.closeSubpath();
  }
  return path;
}

/// A pen at least `least` mm wide; the dashes keep their length.
QPen widened(QPen pen, double least) {
  if (pen.widthF() >= least) return pen;
  QList<qreal> dashes = pen.dashPattern();
  for (qreal& dash : dashes) dash *= pen.widthF() / least;
  const bool dashed = pen.style() == Qt::CustomDashLine;
  pen.setWidthF(least);
  if (dashed) pen.setDashPattern(dashes);
  return pen;
}

QPen lookedPen(Role role, const PaintLook& look) {
  QPen pen = rolePen(role);
  pen.setWidthF(pen.widthF() * look.strokes);
  return pen;
}

/// A convex ring moved outwards by `by` (mm) on all sides, sharp corners cut off at twice that;
/// none when the ring is not convex. A third quicker to fill than a ring is to fill and to stroke.
std::optional<Polygon> grown(const Polygon& ring, double by) {
  const std::size_t count = ring.size();
  if (count < 3) return std::nullopt;
  const double turning = signedArea(ring) < 0 ? -1 : 1;
  Polygon out;
  out.reserve(2 * count);
  for (std::size_t i = 0; i < count; ++i) {
    const Point before = ring[i] - ring[(i + count - 1) % count];
    const Point after = ring[(i + 1) % count] - ring[i];
    const double lengths = norm(before) * norm(after);
    if (lengths <= 0 || turning * cross(before, after) < -1e-9 * lengths) return std::nullopt;
    const Point a = Point{before.y, -before.x} * (turning * by / norm(before));
    const Point b = Point{after.y, -after.x} * (turning * by / norm(after));
    const double opens = 1 + dot(before, after) / lengths;  // 1 + cosine of the turn
    if (opens > 0.5) {
      out.push_back(ring[i] + (a + b) / opens);
    } else {
      out.push_back(ring[i] + a);
      out.push_back(ring[i] + b);
    }
  }
  return out;
}

/// A facet with a hair of its own colour round it, which closes the seam to its neighbours.
void paintFace(QPainter& painter, const PathItem& item, const QColor& fill, double hair) {
  if (item.rings.size() == 1) {
    if (const std::optional<Polygon> wide = grown(item.rings.front(), hair / 2)) {
      painter.fillPath(outline({.rings = {*wide}, .closed = true}), fill);
      return;
    }
  }
  const QPainterPath path = outline(item);
  painter.fillPath(path, fill);
  painter.strokePath(path, QPen(fill, hair));
}

void paintPath(QPainter& painter, const PathItem& item, double thinnest, const PaintLook& look) {
  if (!item.filled) {
    QPen pen = widened(lookedPen(item.like.value_or(item.role), look), thinnest);
    pen.setWidthF(pen.widthF() * item.width);
    if (item.colour) pen.setColor(toColor(*item.colour));
    painter.strokePath(outline(item), pen);
    return;
  }
  const QColor fill = toColor(fillColour(item));
  if (item.role == Role::Face && !item.printed)
    paintFace(painter, item, fill, std::max(0.1, thinnest / 2));
  else
    painter.fillPath(outline(item), fill);
  if (!item.picture) return;
  const QPainterPath path = outline(item);
  paintFill(painter, path, *item.picture, item.picture->grey);
  if (const double shade = shadeOver(item); shade > 0)
    painter.fillPath(path, QColor::fromRgbF(0, 0, 0, static_cast<float>(shade)));
}

/// Pictures lie on the sheet and under everything else.
constexpr Role kAfterPictures = Role::Face;

/// As fine as a printer shows it, and no finer.
void paintPicture(QPainter& painter, const PictureItem& item, const PaintLook& look) {
  constexpr double kPixelsPerMm = 220 / 25.4;
  const double longest = std::max(item.width, item.height) * kPixelsPerMm;
  const std::string_view bytes = item.file.bytes();
  const QImage image =
      isShadePng(bytes)
          ? QImage::fromData(QByteArrayView(bytes.data(), static_cast<qsizetype>(bytes.size())),
                             "PNG")
          : keptPicture(item.file, std::max(1, static_cast<int>(longest)));
  if (image.isNull()) return;
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.translate(toPoint(item.at));
  painter.scale(1, -1);
  painter.drawImage(QRectF(0, -item.height, item.width, item.height),
                    look.black ? image.convertToFormat(QImage::Format_Grayscale8) : image);
  painter.restore();
}

}  // namespace

Colour wordColour(const TextItem& item, const PaintLook& look) {
  const Colour colour = textColour(item);
  // The darkest card that words stand on; white paper is lighter.
  const Colour card = faceColour(1, Surface::Inside, {});
  return item.reversed || look.contrast <= 1 ? colour : darkened(colour, card, look.contrast);
}

QPen rolePen(Role role) {
  const RoleStyle& style = roleStyle(role);
  QPen pen(toColor(style.colour), style.width);
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::MiterJoin);
  if (!style.dashes.empty()) {
    QList<qreal> dashes;  // QPen counts dashes in pen widths
    for (const double dash : style.dashes) dashes.append(dash / style.width);
    pen.setDashPattern(dashes);
  }
  return pen;
}

void paintDrawing(QPainter& painter, const Drawing& coloured, const Wording& wording,
                  const PaintOptions& options) {
  const Drawing grey = options.look.black ? inBlack(coloured) : Drawing();
  const Drawing& drawing = options.look.black ? grey : coloured;
  painter.save();
  painter.translate(options.topLeft);
  painter.scale(options.scale, -options.scale);
  painter.translate(0, -drawing.height);
  const double thinnest = options.thinnest / options.scale;
  WordsPainter words(painter.device());
  for (const Role role : paintOrder()) {
    if (role == kAfterPictures)
      for (const PictureItem& item : drawing.pictures) paintPicture(painter, item, options.look);
    if (options.hidden.contains(role)) continue;
    for (const PathItem& item : drawing.paths)
      if (item.role == role) paintPath(painter, item, thinnest, options.look);
    // Words on card are part of the picture.
    if (!wording && role != Role::Face) continue;
    for (const TextItem& item : drawing.texts)
      if (item.role == role)
        words.paint(painter, item, wording ? wording(item.label) : item.label.literal,
                    toColor(wordColour(item, options.look)));
  }
  painter.restore();
}

}  // namespace creasewright
