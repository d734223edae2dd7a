#include "scene/net_picture.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "bridge/paint_words.h"
#include "bridge/pattern_tile.h"
#include "bridge/picture_fill.h"
#include "bridge/screen_pen.h"
#include "bridge/text.h"
#include "drawing/hatching.h"
#include "drawing/set_words.h"
#include "pages/pale_paper.h"
#include "pages/paper_print.h"
#include "scene/sheet_shadow.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kLitWidth = 7;  // pixels

QRectF sheetRect(const BuiltPiece& piece, const SheetCamera& camera) {
  return {camera.toScreen(Point{0, piece.flat.height}),
          camera.toScreen(Point{piece.flat.width, 0})};
}

void paintHatching(QPainter& painter, Role role, const std::vector<Polygon>& rings, double degrees,
                   const SheetCamera& camera) {
  constexpr double kPixels = 7;  // between lines, so that zooming out does not make it grey
  painter.setPen(QPen(roleColour(role), 1));
  QList<QLineF> lines;
  for (const Segment& line : hatch(rings, kPixels / camera.scale(), degrees))
    lines.emplace_back(camera.toScreen(line.a), camera.toScreen(line.b));
  painter.drawLines(lines);
}

/// The paper's print over the whole blank, under its veil.
void paintPaper(QPainter& painter, const BuiltDesign& built, const BuiltPiece& piece,
                const PaperPattern& paper, const SheetCamera& camera) {
  const QPointF origin = camera.toScreen(Point{0, 0});
  const double scale = camera.scale();
  const QTransform onScreen(scale, 0, 0, -scale, origin.x(), origin.y());
  const QTransform place = toTransform(paperOnBlank(built, piece));
  QPainterPath blank;
  blank.addRect(QRectF(0, 0, piece.flat.width, piece.flat.height));
  painter.save();
  painter.setTransform(onScreen, true);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  if (paper.picture) {
    if (const auto picture = pictureOn(paper, paperOnBlank(built, piece)))
      paintFill(painter, blank, *picture);
  } else {
    const PatternTile& tile = patternTile(paper, scale * painter.device()->devicePixelRatioF());
    QBrush print(tile.image);
    print.setTransform(tile.toPaper * place);
    painter.fillPath(blank, print);
  }
  painter.fillPath(blank, QColor::fromRgbF(1, 1, 1, static_cast<float>(veilOver(piece))));
  painter.restore();
}

void paintWaste(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera) {
  for (const WastePiece& waste : piece.waste) {
    std::vector<Polygon> rings{waste.area.outer};
    rings.insert(rings.end(), waste.area.holes.begin(), waste.area.holes.end());
    paintHatching(painter, Role::Waste, rings, -45, camera);
  }
}

void paintGlue(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera) {
  for (const GlueArea& glue : piece.gluePlan) {
    if (glue.area.size() > 2) {
      paintHatching(painter, Role::Glue, {glue.area},
                    glue.flapFace == Face::Inside ? kGlueDegrees : kGlueBehindDegrees, camera);
    }
  }
}

void paintCreases(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera) {
  for (std::size_t i = 0; i < piece.net.creases.size(); ++i) {
    const Crease& crease = piece.net.creases[i];
    if (crease.kind == CreaseKind::Flat) continue;
    const Role role = crease.kind == CreaseKind::Perforated ? Role::Perforation
                      : crease.isValley()                   ? Role::Valley
                                                            : Role::Mountain;
    painter.setPen(screenPen(role, camera.scale()));
    const Segment& line = piece.flat.creases[i];
    painter.drawLine(camera.toScreen(line.a), camera.toScreen(line.b));
  }
}

void paintInscriptions(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera) {
  painter.setPen(screenPen(Role::Positions, camera.scale()));
  for (const GuideMark& mark : piece.net.marks) {
    Polyline line;
    for (const Point& p : mark.line) line.push_back(piece.flat.place(mark.panel, p));
    painter.drawPolyline(camera.toScreen(line));
  }
  if (piece.net.inscriptions.empty()) return;
  painter.save();
  const QPointF corner = camera.toScreen(Point{});
  painter.translate(corner);
  painter.scale(camera.scale(), -camera.scale());
  WordsPainter words(painter.device());
  for (const Inscription& line : piece.net.inscriptions)
    words.paint(painter, textOf(line, piece.flat.place(line.panel, line.at), line.turnDegrees),
                line.text, roleColour(Role::Legend));
  painter.restore();
}

void paintHighlight(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera,
                    const Place& lit) {
  QColor halo = lightTheme().halo;
  if (!lit.lines.empty()) {
    halo.setAlpha(150);
    painter.setPen(QPen(halo, kLitWidth, Qt::SolidLine, Qt::RoundCap));
    for (const Segment& line : lit.lines)
      painter.drawLine(camera.toScreen(line.a), camera.toScreen(line.b));
    return;
  }
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i) {
    if (!lit.panels.contains(text(piece.net.panels[i].id))) continue;
    halo.setAlpha(70);
    painter.setBrush(halo);
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(camera.toScreen(piece.flat.panels[i]));
  }
  painter.setBrush(Qt::NoBrush);
}

}  // namespace

void paintSheet(QPainter& painter, const BuiltDesign& built, const BuiltPiece& piece,
                const SheetCamera& camera) {
  const QRect sheet = sheetRect(piece, camera).toRect();
  paintSheetShadow(painter, sheet);
  const std::optional<Colour> pale = paleColour(piece);
  painter.fillRect(sheet, pale ? toColor(*pale) : roleColour(Role::Sheet));
  const PaperPattern* paper = piece.card.colours.patternOf(!faceIsUp(piece));
  if (paper != nullptr) paintPaper(painter, built, piece, *paper, camera);
  paintWaste(painter, piece, camera);
}

void paintNet(QPainter& painter, const BuiltPiece& piece, const SheetCamera& camera,
              const Place& lit) {
  paintHighlight(painter, piece, camera, lit);
  paintGlue(painter, piece, camera);
  paintCreases(painter, piece, camera);
  painter.setPen(screenPen(Role::Cut, camera.scale()));
  for (const Polyline& line : cutLines(piece.flat)) painter.drawPolyline(camera.toScreen(line));
  paintInscriptions(painter, piece, camera);
}

int panelAt(const BuiltPiece& piece, Point at) {
  for (std::size_t i = 0; i < piece.flat.panels.size(); ++i)
    if (locate(at, piece.flat.panels[i]) != Side::Outside) return static_cast<int>(i);
  return -1;
}

}  // namespace creasewright
