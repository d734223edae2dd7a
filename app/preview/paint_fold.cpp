#include "preview/paint_fold.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <list>
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
#include "preview/in_rows.h"
#include "preview/print_filler.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

QPolygonF onScreen(const Polygon& outline, const QTransform& place) {
  QPolygonF out;
  for (const Point& p : outline) out << place.map(QPointF(p.x, p.y));
  return out;
}

/// What the light leaves of white, 0 to 255.
int lightOn(const Facet& facet) {
  return faceColour(facet.light, surfaceOf(facet), Colour{0xFF, 0xFF, 0xFF}).red;
}

/// The last prints that were filled, by their tiles.
const PrintFiller& fillerOf(const QImage& tile) {
  constexpr std::size_t kKept = 32;
  thread_local std::list<std::pair<qint64, PrintFiller>> kept;
  const auto known =
      std::ranges::find(kept, tile.cacheKey(), &std::pair<qint64, PrintFiller>::first);
  if (known != kept.end()) {
    kept.splice(kept.begin(), kept, known);
  } else {
    kept.emplace_front(tile.cacheKey(), PrintFiller(tile));
    if (kept.size() > kKept) kept.pop_back();
  }
  return kept.front().second;
}

/// The card that facets show, each with its print in the light that falls on it.
class FacetPainter {
 public:
  /// `painter` paints on `canvas`.
  FacetPainter(QPainter& painter, QImage& canvas, const FoldPicture& picture, const Dressed& shown,
               const QTransform& place)
      : painter_(painter),
        pixels_{canvas.bits(), canvas.bytesPerLine(), canvas.width()},
        rows_(canvas.height()),
        ratio_(canvas.devicePixelRatio()),
        picture_(picture),
        shown_(shown),
        place_(place) {}

  /// `lit`: with the halo over it.
  void paint(const Facet& facet, bool lit) {
    const QPolygonF outline = onScreen(facet.outline, place_);
    const SeenPattern seen = patternSeen(facet, picture_, shown_.looks);
    if (seen.paper != nullptr && !seen.paper->picture) {
      addPrint(outline, facet, seen);
    } else {
      finishPrints();
      paintPlain(outline, facet);
      if (seen.paper != nullptr) paintPicture(outline, facet, seen);
    }
    if (lit) paintHalo(outline);
  }

  /// Prints that come one after the other are filled together.
  void finishPrints() {
    if (prints_.empty()) return;
    inRows(rows_, [&](int from, int to) {
      for (const Print& print : prints_) print.filler->fill(print.face, pixels_, from, to);
    });
    prints_.clear();
  }

 private:
  struct Print {
    const PrintFiller* filler;
    PrintFiller::Face face;
  };

  void addPrint(const QPolygonF& outline, const Facet& facet, const SeenPattern& seen) {
    const QTransform toPixels = QTransform::fromScale(ratio_, ratio_);
    const PatternTile& tile =
        patternTile(*seen.paper, std::hypot(place_.m11(), place_.m12()) * ratio_);
    const QTransform tiles = tile.toPaper * toTransform(seen.place) * place_ * toPixels;
    if (!tiles.isInvertible()) return;
    prints_.push_back(
        {&fillerOf(tile.image), {toPixels.map(outline), tiles.inverted(), lightOn(facet)}});
  }

  /// By whole pixels, for which the painter takes a tenth of the time; a hairline of the same
  /// colour makes the rim smooth and closes the seam to the next.
  void paintPlain(const QPolygonF& outline, const Facet& facet) {
    const QColor colour = toColor(
        faceColour(facet.light, surfaceOf(facet), ownColour(facet, picture_, shown_.looks)));
    painter_.setRenderHint(QPainter::Antialiasing, false);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colour);
    painter_.drawPolygon(outline);
    painter_.setRenderHint(QPainter::Antialiasing);
    painter_.setPen(QPen(colour, 0.7));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolygon(outline);
    painter_.setPen(Qt::NoPen);
  }

  void paintHalo(const QPolygonF& outline) {
    finishPrints();
    QColor halo = lightTheme().halo;
    halo.setAlphaF(0.45F);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(halo);
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
    // What the light leaves of white, over the picture.
    painter_.setBrush(QColor(0, 0, 0, 0xFF - lightOn(facet)));
    painter_.drawPolygon(outline);
  }

  QPainter& painter_;
  PrintFiller::Canvas pixels_;
  int rows_;
  double ratio_;
  const FoldPicture& picture_;
  const Dressed& shown_;
  const QTransform& place_;
  std::vector<Print> prints_;
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

void paintFold(QImage& canvas, const FoldPicture& picture, const QTransform& place,
               const Dressed& shown, const FoldLight& light) {
  QPainter painter(&canvas);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
  FacetPainter facets(painter, canvas, picture, shown, place);
  for (const Facet& facet : picture.facets)
    facets.paint(facet,
                 facet.panel >= 0 && isLit(static_cast<std::size_t>(facet.panel), shown, light));
  facets.finishPrints();
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

int panelSeenAt(const FoldPicture& picture, const QTransform& place, QPointF pixel) {
  const QPointF at = place.inverted().map(pixel);
  // What is painted later hides what is under it.
  for (auto facet = picture.facets.rbegin(); facet != picture.facets.rend(); ++facet)
    if (locate({at.x(), at.y()}, facet->outline) != Side::Outside) return facet->panel;
  return -1;
}

}  // namespace creasewright
