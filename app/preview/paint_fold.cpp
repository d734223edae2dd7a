#include "preview/paint_fold.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "bridge/paint_drawing.h"
#include "bridge/paint_words.h"
#include "bridge/pattern_tile.h"
#include "bridge/picture_fill.h"
#include "bridge/screen_pen.h"
#include "bridge/text.h"
#include "pages/fold_drawing.h"
#include "pages/fold_words.h"
#include "pages/paper_print.h"
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

QPolygonF onScreen(const Polygon& outline, const QTransform& place) {
  QPolygonF out;
  for (const Point& p : outline) out << place.map(QPointF(p.x, p.y));
  return out;
}

QColor facetColour(const Facet& facet, const FoldPicture& picture,
                   std::span<const PanelLook> looks) {
  return toColor(faceColour(facet.light, surfaceOf(facet), ownColour(facet, picture, looks)));
}

/// What the light leaves of white.
void paintShade(QPainter& painter, const QPolygonF& outline, const Facet& facet) {
  painter.setPen(Qt::NoPen);
  const Colour white = faceColour(facet.light, surfaceOf(facet), Colour{0xFF, 0xFF, 0xFF});
  painter.setBrush(QColor(0, 0, 0, 0xFF - white.red));
  painter.drawPolygon(outline);
}

/// The paper's print in the facet, in the light that falls on it.
void paintPrint(QPainter& painter, const QPolygonF& outline, const Facet& facet,
                const SeenPattern& seen, const QTransform& place) {
  if (seen.paper->picture) {
    painter.drawPolygon(outline);
    if (const auto picture = pictureOn(*seen.paper, seen.place)) {
      painter.save();
      painter.setTransform(place, true);
      QPainterPath area;
      area.addPolygon(place.inverted().map(outline));
      area.closeSubpath();
      paintFill(painter, area, *picture);
      painter.restore();
    }
    paintShade(painter, outline, facet);
    return;
  }
  const double scale = std::hypot(place.m11(), place.m12());
  const PatternTile& tile = patternTile(*seen.paper, scale * painter.device()->devicePixelRatioF());
  QBrush print(tile.image);
  print.setTransform(tile.toPaper * toTransform(seen.place) * place);
  painter.setBrush(print);
  painter.drawPolygon(outline);
  paintShade(painter, outline, facet);
}

/// The card that a facet shows; lit, with the halo over it.
void paintFacet(QPainter& painter, const Facet& facet, const FoldPicture& picture,
                const Dressed& shown, const QTransform& place, bool lit) {
  const QPolygonF outline = onScreen(facet.outline, place);
  const QColor colour = facetColour(facet, picture, shown.looks);
  // A hairline of the same colour closes the seams between neighbouring facets.
  painter.setPen(QPen(colour, 0.7));
  const SeenPattern seen = patternSeen(facet, picture, shown.looks);
  painter.setBrush(colour);
  if (seen.paper != nullptr) {
    paintPrint(painter, outline, facet, seen, place);
  } else {
    painter.setBrush(colour);
    painter.drawPolygon(outline);
  }
  if (!lit) return;
  QColor halo = lightTheme().halo;
  halo.setAlphaF(0.45F);
  painter.setPen(Qt::NoPen);
  painter.setBrush(halo);
  painter.drawPolygon(outline);
}

void paintWords(QPainter& painter, const FoldPicture& picture, const Dressed& shown,
                const QTransform& place) {
  const Drawing seen = wordsSeen(picture, shown.looks, shown.words);
  painter.setPen(Qt::NoPen);
  for (const PathItem& plate : seen.paths) {
    QPainterPath path;
    for (const Polygon& ring : plate.rings) {
      path.addPolygon(onScreen(ring, place));
      path.closeSubpath();
    }
    painter.fillPath(path, toColor(fillColour(plate)));
  }
  if (seen.texts.empty()) return;
  painter.save();
  painter.setTransform(place, true);
  WordsPainter words(painter.device());
  for (const TextItem& item : seen.texts)
    words.paint(painter, item, item.label.literal, toColor(textColour(item)));
  painter.restore();
}

/// Neighbours of one look are drawn at once: an opening has dozens.
void paintEdges(QPainter& painter, const FoldPicture& picture, const std::vector<EdgeTone>& tones,
                const QTransform& place) {
  QList<QLineF> run;
  for (std::size_t i = 0; i < picture.edges.size(); ++i) {
    const VisibleEdge& edge = picture.edges[i];
    run.emplace_back(place.map(QPointF(edge.line.a.x, edge.line.a.y)),
                     place.map(QPointF(edge.line.b.x, edge.line.b.y)));
    const bool goesOn = i + 1 < picture.edges.size() && tones[i + 1] == tones[i] &&
                        picture.edges[i + 1].crease == edge.crease;
    if (goesOn) continue;
    // No wider than a pixel: the painter takes many times as long for those.
    const double width = edge.crease ? 0.8 : 1;
    const auto draw = [&](QColor ink, double wide) {
      ink.setAlphaF(edge.crease ? 0.45F : 0.9F);
      painter.setPen(QPen(ink, wide, Qt::SolidLine, Qt::RoundCap));
      painter.drawLines(run);
    };
    if (tones[i] == EdgeTone::CasedInk) draw(toColor(kLightEdge), width * kCasing);
    draw(tones[i] == EdgeTone::Light ? toColor(kLightEdge) : roleColour(Role::Edge), width);
    run.clear();
  }
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

bool isLit(std::size_t panel, const Dressed& shown, const FoldLight& light) {
  const bool wanted = light.piece < 0 || shown.owners[panel].piece == light.piece;
  return wanted && light.panels.contains(text(shown.net.panels[panel].id));
}

}  // namespace

void paintFold(QPainter& painter, const FoldPicture& picture, const FoldPlace& where,
               const Dressed& shown, const FoldLight& light) {
  const QTransform place = placing(picture.extent, where.reach, where.room, where.zoom);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  for (const Facet& facet : picture.facets) {
    const bool lit = facet.panel >= 0 && isLit(static_cast<std::size_t>(facet.panel), shown, light);
    paintFacet(painter, facet, picture, shown, place, lit);
  }
  paintWords(painter, picture, shown, place);
  painter.setBrush(Qt::NoBrush);
  paintEdges(painter, picture, edgeTones(picture, shown.looks), place);
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
