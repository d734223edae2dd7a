#include "preview/paint_fold.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "bridge/screen_pen.h"
#include "bridge/text.h"
#include "pages/fold_drawing.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

/// Picture coordinates (mm, y up) to pixels, the picture in the middle of `room`.
QTransform placing(const Bounds& extent, double reach, const QRectF& room, double zoom) {
  const double wide = std::max(extent.width(), 1.0);
  const double high = std::max(extent.height(), 1.0);
  const double scale =
      std::min({room.width() / wide, room.height() / high, room.width() / std::max(reach, 1.0)}) *
      zoom;
  QTransform out;
  out.translate(room.center().x(), room.center().y());
  out.scale(scale, -scale);
  out.translate(-(extent.low.x + extent.high.x) / 2, -(extent.low.y + extent.high.y) / 2);
  return out;
}

QColor facetColour(const Facet& facet, std::span<const CardColours> colours, bool lit) {
  const Colour c = faceColour(facet.light, surfaceOf(facet), ownColour(facet, colours));
  const QColor card(c.red, c.green, c.blue);
  if (!lit) return card;
  const QColor halo = lightTheme().halo;
  return QColor::fromRgbF(static_cast<float>(card.redF() * 0.55 + halo.redF() * 0.45),
                          static_cast<float>(card.greenF() * 0.55 + halo.greenF() * 0.45),
                          static_cast<float>(card.blueF() * 0.55 + halo.blueF() * 0.45));
}

/// Whether a visible part lies on a line of the picture.
bool isPartOf(const Segment& part, const Segment& line) {
  constexpr double kNear = 0.05;  // mm
  const double length = distance(line.a, line.b);
  if (length < kNear) return false;
  const Point along = (line.b - line.a) / length;
  return std::ranges::all_of(std::array{part.a, part.b}, [&](Point p) {
    const double at = dot(p - line.a, along);
    return std::abs(dot(p - line.a, turnLeft(along))) < kNear && at > -kNear && at < length + kNear;
  });
}

QPolygonF onScreen(const Polygon& outline, const QTransform& place) {
  QPolygonF out;
  for (const Point& p : outline) out << place.map(QPointF(p.x, p.y));
  return out;
}

}  // namespace

void paintFold(QPainter& painter, const FoldPicture& picture, const FoldPlace& where,
               const Dressed& shown, const FoldLight& light) {
  const QTransform place = placing(picture.extent, where.reach, where.room, where.zoom);
  for (const Facet& facet : picture.facets) {
    const bool lit =
        facet.panel >= 0 &&
        light.panels.contains(text(shown.net.panels[static_cast<std::size_t>(facet.panel)].id));
    const QColor colour = facetColour(facet, shown.colours, lit);
    // A hairline of the same colour closes the seams between neighbouring facets.
    painter.setPen(QPen(colour, 0.7));
    painter.setBrush(colour);
    painter.drawPolygon(onScreen(facet.outline, place));
  }
  painter.setBrush(Qt::NoBrush);
  const std::vector<bool> onDark = edgesOnDark(picture, shown.colours);
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const VisibleEdge& edge = picture.edges[i];
    QColor ink = onDark[i] ? toColor(kLightEdge) : roleColour(Role::Edge);
    ink.setAlphaF(edge.crease ? 0.45F : 0.9F);
    painter.setPen(QPen(ink, edge.crease ? 0.8 : 1.1, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(place.map(QPointF(edge.line.a.x, edge.line.a.y)),
                     place.map(QPointF(edge.line.b.x, edge.line.b.y)));
  }
  painter.setPen(QPen(lightTheme().halo, 3, Qt::SolidLine, Qt::RoundCap));
  for (const VisibleEdge& edge : picture.edges) {
    if (std::ranges::any_of(light.lines,
                            [&](const Segment& line) { return isPartOf(edge.line, line); })) {
      painter.drawLine(place.map(QPointF(edge.line.a.x, edge.line.a.y)),
                       place.map(QPointF(edge.line.b.x, edge.line.b.y)));
    }
  }
}

int panelSeenAt(const FoldPicture& picture, const FoldPlace& where, QPointF pixel) {
  const QTransform place = placing(picture.extent, where.reach, where.room, where.zoom);
  const QPointF at = place.inverted().map(pixel);
  // What is painted later hides what is under it.
  for (auto facet = picture.facets.rbegin(); facet != picture.facets.rend(); ++facet)
    if (locate({at.x(), at.y()}, facet->outline) != Side::Outside) return facet->panel;
  return -1;
}

}  // namespace creasewright
