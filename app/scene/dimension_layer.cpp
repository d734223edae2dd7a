#include "scene/dimension_layer.h"

#include <algorithm>
#include <cmath>

#include "bridge/text.h"
#include "drawing/spread.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kLeaderGap = 4;  // pixels from the sheet to the leader
constexpr double kStraight = 5;   // straight parts of the leader
constexpr double kSlope = 12;     // room to move sideways

/// Distances (mm) of all scores parallel to one side, each once.
std::vector<double> scoreDistances(const BuiltPiece& piece, bool upright) {
  std::vector<double> found;
  for (std::size_t i = 0; i < piece.net.creases.size(); ++i) {
    const Segment& s = piece.flat.creases[i];
    const double skew = upright ? s.b.x - s.a.x : s.b.y - s.a.y;
    if (piece.net.creases[i].kind != CreaseKind::Flat && std::abs(skew) < 1e-6)
      found.push_back(upright ? s.a.x : s.a.y);
  }
  std::ranges::sort(found);
  const auto same = [](double a, double b) { return b - a < 1e-3; };
  found.erase(std::unique(found.begin(), found.end(), same), found.end());
  return found;
}

DimensionLabel label(double mm, Unit unit, const QFontMetricsF& metrics, bool turned) {
  DimensionLabel out;
  out.words = lengthText(Length::mm(mm), unit, false);
  out.box = QRectF(0, 0, metrics.horizontalAdvance(out.words) + 2, metrics.height());
  out.turned = turned;
  return out;
}

void addUpright(std::vector<DimensionLabel>& out, const BuiltPiece& piece,
                const SheetCamera& camera, Unit unit, const QFontMetricsF& metrics) {
  const std::vector<double> distances = scoreDistances(piece, true);
  std::vector<double> pixels;
  pixels.reserve(distances.size());
  for (const double mm : distances) pixels.push_back(camera.toScreen(Point{mm, 0}).x());
  const std::vector<double> places = spreadApart(pixels, metrics.height());
  const double edge = camera.toScreen(Point{0, 0}).y() + kLeaderGap;
  for (std::size_t i = 0; i < distances.size(); ++i) {
    DimensionLabel next = label(distances[i], unit, metrics, true);
    const double end = edge + 2 * kStraight + kSlope;
    next.leader << QPointF(pixels[i], edge) << QPointF(pixels[i], edge + kStraight)
                << QPointF(places[i], edge + kStraight + kSlope) << QPointF(places[i], end);
    next.box.moveCenter({places[i], end + 2 + next.box.width() / 2});
    next.ofScore = true;
    next.mm = distances[i];
    out.push_back(next);
  }
}

void addLevel(std::vector<DimensionLabel>& out, const BuiltPiece& piece, const SheetCamera& camera,
              Unit unit, const QFontMetricsF& metrics) {
  std::vector<double> distances = scoreDistances(piece, false);
  std::ranges::reverse(distances);  // from the top down, as pixels count
  std::vector<double> pixels;
  pixels.reserve(distances.size());
  for (const double mm : distances) pixels.push_back(camera.toScreen(Point{0, mm}).y());
  const std::vector<double> places = spreadApart(pixels, metrics.height());
  const double edge = camera.toScreen(Point{0, 0}).x() - kLeaderGap;
  for (std::size_t i = 0; i < distances.size(); ++i) {
    DimensionLabel next = label(distances[i], unit, metrics, false);
    const double end = edge - 2 * kStraight - kSlope;
    next.leader << QPointF(edge, pixels[i]) << QPointF(edge - kStraight, pixels[i])
                << QPointF(edge - kStraight - kSlope, places[i]) << QPointF(end, places[i]);
    next.box.moveCenter({end - 2 - next.box.width() / 2, places[i]});
    next.ofScore = true;
    next.mm = distances[i];
    out.push_back(next);
  }
}

/// The blank's width above and its height at the right.
void addBlank(std::vector<DimensionLabel>& out, const BuiltPiece& piece, const SheetCamera& camera,
              Unit unit, const QFontMetricsF& metrics) {
  const QPointF high = camera.toScreen(Point{piece.flat.width, piece.flat.height});
  const QPointF low = camera.toScreen(Point{0, 0});
  DimensionLabel wide = label(piece.flat.width, unit, metrics, false);
  wide.leader << QPointF(low.x(), high.y() - kLeaderGap)
              << QPointF(high.x(), high.y() - kLeaderGap);
  wide.box.moveCenter(
      {(low.x() + high.x()) / 2, high.y() - kLeaderGap - 2 - wide.box.height() / 2});
  DimensionLabel tall = label(piece.flat.height, unit, metrics, true);
  tall.leader << QPointF(high.x() + kLeaderGap, high.y())
              << QPointF(high.x() + kLeaderGap, low.y());
  tall.box.moveCenter(
      {high.x() + kLeaderGap + 2 + tall.box.height() / 2, (low.y() + high.y()) / 2});
  out.push_back(wide);
  out.push_back(tall);
}

}  // namespace

QRectF DimensionLabel::area() const {
  if (!turned) return box;
  QRectF standing(0, 0, box.height(), box.width());
  standing.moveCenter(box.center());
  return standing;
}

std::vector<DimensionLabel> layDimensions(const BuiltPiece& piece, const SheetCamera& camera,
                                          Unit unit, const QFontMetricsF& metrics) {
  std::vector<DimensionLabel> out;
  addUpright(out, piece, camera, unit, metrics);
  addLevel(out, piece, camera, unit, metrics);
  addBlank(out, piece, camera, unit, metrics);
  return out;
}

double dimensionRoom(const QFontMetricsF& metrics) {
  return kLeaderGap + 2 * kStraight + kSlope + 4 +
         metrics.horizontalAdvance(QStringLiteral("~000.00"));
}

void paintDimensions(QPainter& painter, const std::vector<DimensionLabel>& labels,
                     const std::function<bool(const DimensionLabel&)>& isLit) {
  painter.save();
  for (const DimensionLabel& label : labels) {
    if (isLit(label)) {
      QColor halo = theme().halo;
      halo.setAlpha(90);
      painter.fillRect(label.area().adjusted(-2, -1, 2, 1), halo);
    }
    painter.setPen(QPen(theme().hairline.darker(theme().dark ? 70 : 120), 1));
    painter.drawPolyline(label.leader);
    painter.setPen(theme().quietInk);
    painter.save();
    painter.translate(label.box.center());
    if (label.turned) painter.rotate(-90);
    const QRectF box(-label.box.width() / 2, -label.box.height() / 2, label.box.width(),
                     label.box.height());
    painter.drawText(box, Qt::AlignCenter, label.words);
    painter.restore();
  }
  painter.restore();
}

}  // namespace creasewright
