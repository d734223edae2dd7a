#include "preview/paint_fold.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

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

/// Where a shadow is seen: most of it lies under what stands on it, and a soft picture drawn larger
/// takes long.
QRegion openGround(const FoldShadow& shadow, const FoldPicture& picture, const QRectF& target) {
  constexpr int kTiles = 20;    // on each side
  constexpr double kLarge = 4;  // tiles that a facet has to cover to be asked
  const Bounds& extent = shadow.extent;
  const Point tile{extent.width() / kTiles, extent.height() / kTiles};
  std::vector<const Facet*> large;
  for (const Facet& facet : picture.facets)
    if (std::abs(signedArea(facet.outline)) > kLarge * tile.x * tile.y) large.push_back(&facet);
  const auto edge = [](double from, double size, int i) {
    return static_cast<int>(std::lround(from + size * i / kTiles));
  };
  const auto isDark = [&](int row, int column) {
    const QImage& image = shadow.image;
    for (int y = image.height() * row / kTiles; y <= image.height() * (row + 1) / kTiles; ++y)
      for (int x = image.width() * column / kTiles; x <= image.width() * (column + 1) / kTiles; ++x)
        if (image.valid(x, y) && qAlpha(image.pixel(x, y)) > 1) return true;
    return false;
  };
  std::vector<QRect> open;  // in rows, as a region keeps them
  for (int row = 0; row < kTiles; ++row)
    for (int column = 0; column < kTiles; ++column) {
      const Point low{extent.low.x + column * tile.x, extent.high.y - (row + 1) * tile.y};
      const Polygon square{low, low + Point{tile.x, 0}, low + tile, low + Point{0, tile.y}};
      const bool hidden = std::ranges::any_of(
          large, [&](const Facet* facet) { return liesWellInside(square, facet->outline, 0); });
      if (hidden || !isDark(row, column)) continue;
      const QPoint first(edge(target.left(), target.width(), column),
                         edge(target.top(), target.height(), row));
      const QPoint next(edge(target.left(), target.width(), column + 1),
                        edge(target.top(), target.height(), row + 1));
      const QRect part(first, next - QPoint(1, 1));
      if (part.isEmpty()) continue;
      if (!open.empty() && open.back().top() == part.top() &&
          open.back().right() + 1 == part.left())
        open.back().setRight(part.right());
      else
        open.push_back(part);
    }
  QRegion region;
  region.setRects(open.data(), static_cast<int>(open.size()));
  return region;
}

/// What the light leaves of white, 0 to 255.
int lightOn(const Facet& facet) {
  return faceColour(facet.light, surfaceOf(facet), Colour{0xFF, 0xFF, 0xFF}).red;
}

/// The card that facets show, each with its print in the light that falls on it.
class FacetPainter {
 public:
  FacetPainter(QPainter& painter, const FoldPicture& picture, const Dressed& shown,
               const QTransform& place)
      : painter_(painter), picture_(picture), shown_(shown), place_(place) {}

  /// `lit`: with the halo over it.
  void paint(const Facet& facet, bool lit) {
    const QPolygonF outline = onScreen(facet.outline, place_);
    const QColor colour = toColor(
        faceColour(facet.light, surfaceOf(facet), ownColour(facet, picture_, shown_.looks)));
    const SeenPattern seen = patternSeen(facet, picture_, shown_.looks);
    if (seen.paper != nullptr && !seen.paper->picture) {
      paintTiles(outline, facet, seen);
    } else {
      // Plain ones are smooth at their rims, where a hairline of the same colour closes the seam to
      // the next.
      painter_.setPen(QPen(colour, 0.7));
      painter_.setBrush(colour);
      painter_.drawPolygon(outline);
      painter_.setPen(Qt::NoPen);
    }
    if (seen.paper != nullptr && seen.paper->picture) paintPicture(outline, facet, seen);
    if (!lit) return;
    QColor halo = lightTheme().halo;
    halo.setAlphaF(0.45F);
    painter_.setBrush(halo);
    painter_.drawPolygon(outline);
  }

 private:
  /// Prints go on from facet to facet by whole pixels. The tile itself is darkened: a dark veil
  /// over the print the painter would hand to other threads bit by bit, which takes longer than the
  /// painting; but strips of a bent panel, each in a light of its own, are smaller than the tile.
  void paintTiles(const QPolygonF& outline, const Facet& facet, const SeenPattern& seen) {
    const double ratio = painter_.device()->devicePixelRatioF();
    const double scale = std::hypot(place_.m11(), place_.m12()) * ratio;
    const PatternTile& tile = patternTile(*seen.paper, scale);
    const int light = lightOn(facet);
    const double pixels = std::abs(signedArea(facet.outline)) * scale * scale;
    const bool isSmall = pixels < 1.0 * tile.image.width() * tile.image.height();
    QBrush print(isSmall ? tile.image : shaded(tile.image, light));
    print.setTransform(tile.toPaper * toTransform(seen.place) * place_);
    painter_.setRenderHint(QPainter::Antialiasing, false);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(print);
    painter_.drawPolygon(outline);
    if (isSmall) paintVeil(outline, light);
    painter_.setRenderHint(QPainter::Antialiasing);
  }

  const QImage& shaded(const QImage& tile, int light) {
    QImage& known = shaded_[{tile.cacheKey(), light}];
    if (known.isNull()) known = inLight(tile, light);
    return known;
  }

  /// What the light leaves of white, over a print.
  void paintVeil(const QPolygonF& outline, int light) {
    painter_.setBrush(QColor(0, 0, 0, 0xFF - light));
    painter_.drawPolygon(outline);
  }

  void paintPicture(const QPolygonF& outline, const Facet& facet, const SeenPattern& seen) {
    if (const auto picture = pictureOn(*seen.paper, seen.place)) {
      painter_.save();
      painter_.setTransform(place_, true);
      QPainterPath area;
      area.addPolygon(place_.inverted().map(outline));
      area.closeSubpath();
      paintFill(painter_, area, *picture);
      painter_.restore();
    }
    paintVeil(outline, lightOn(facet));
  }

  QPainter& painter_;
  const FoldPicture& picture_;
  const Dressed& shown_;
  const QTransform& place_;
  std::map<std::pair<qint64, int>, QImage> shaded_;  // tiles by their image and light
};

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
    // No wider than a pixel: the painter takes many times as long for those. Thinner ones are as
    // faint as clear ones, which it would hand to other threads bit by bit.
    const auto draw = [&](QColor ink, double wide) {
      painter.setPen(QPen(ink, wide, Qt::SolidLine, Qt::RoundCap));
      painter.drawLines(run);
    };
    if (tones[i] == EdgeTone::CasedInk) draw(toColor(kLightEdge), edge.crease ? 1 : kCasing);
    draw(tones[i] == EdgeTone::Light ? toColor(kLightEdge) : roleColour(Role::Edge),
         edge.crease ? 0.36 : 0.9);
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

FoldShadow foldShadow(const GroundShadow& shadow) {
  if (shadow.empty()) return {};
  QImage image(shadow.columns, shadow.rows, QImage::Format_ARGB32_Premultiplied);
  auto dark = shadow.dark.begin();
  for (int y = 0; y < shadow.rows; ++y) {
    auto* row = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < shadow.columns; ++x) row[x] = qRgba(0, 0, 0, *dark++);
  }
  return {std::move(image), shadow.extent};
}

void paintShadow(QPainter& painter, const FoldShadow& shadow, const FoldPicture& picture,
                 const FoldPlace& where) {
  if (shadow.image.isNull()) return;
  const QTransform place = placing(picture.extent, where.reach, where.room, where.zoom);
  const Bounds& extent = shadow.extent;
  const QRectF target =
      place.mapRect(QRectF(extent.low.x, extent.low.y, extent.width(), extent.height()));
  painter.save();
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.setClipRegion(openGround(shadow, picture, target), Qt::IntersectClip);
  painter.drawImage(target, shadow.image);
  painter.restore();
}

void paintFold(QPainter& painter, const FoldPicture& picture, const FoldPlace& where,
               const Dressed& shown, const FoldLight& light) {
  const QTransform place = placing(picture.extent, where.reach, where.room, where.zoom);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  FacetPainter facets(painter, picture, shown, place);
  for (const Facet& facet : picture.facets)
    facets.paint(facet,
                 facet.panel >= 0 && isLit(static_cast<std::size_t>(facet.panel), shown, light));
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
