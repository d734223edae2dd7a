#include "scene/ruler.h"

#include <array>
#include <cmath>

#include "widgets/theme.h"

namespace creasewright {

namespace {

/// Marks of one ruler: a fine step, how many of them make a labelled one, and what the label
/// counts.
struct Marks {
  double step = 1;  ///< mm
  int perMiddle = 5;
  int perLabel = 10;
  double labelled = 1;  ///< what a labelled mark adds to the number shown
};

constexpr double kInch = 25.4;

Marks marksFor(Unit unit, double scale) {
  constexpr double kClosest = 4;  // pixels between marks
  constexpr double kLabelRoom = 34;
  static constexpr std::array<Marks, 6> kMetric{{{1, 5, 10, 10},
                                                 {2, 5, 10, 20},
                                                 {5, 2, 10, 50},
                                                 {10, 5, 10, 100},
                                                 {20, 5, 10, 200},
                                                 {50, 2, 10, 500}}};
  static constexpr std::array<Marks, 6> kImperial{{{kInch / 16, 8, 16, 1},
                                                   {kInch / 8, 4, 8, 1},
                                                   {kInch / 4, 2, 4, 1},
                                                   {kInch / 2, 2, 2, 1},
                                                   {kInch, 2, 4, 4},
                                                   {kInch, 4, 12, 12}}};
  const auto& table = unit == Unit::Inch ? kImperial : kMetric;
  for (const Marks& marks : table)
    if (marks.step * scale >= kClosest && marks.step * marks.perLabel * scale >= kLabelRoom)
      return marks;
  return table.back();
}

bool isLevel(SheetSide border) { return border == SheetSide::Top || border == SheetSide::Bottom; }

/// Screen position along the ruler of `mm` from the ruler's own zero.
double positionOf(const Ruler& ruler, const SheetCamera& camera, double mm) {
  switch (ruler.border) {
    case SheetSide::Top:
      return camera.toScreen(Point{mm, 0}).x();
    case SheetSide::Bottom:
      return camera.toScreen(Point{ruler.sheetWidth - mm, 0}).x();
    case SheetSide::Left:
      return camera.toScreen(Point{0, mm}).y();
    case SheetSide::Right:
      return camera.toScreen(Point{0, ruler.sheetHeight - mm}).y();
  }
  return 0;
}

/// A mark from the ruler's inner border outwards.
void paintMark(QPainter& painter, const Ruler& ruler, double at, double size) {
  const QRectF& r = ruler.area;
  switch (ruler.border) {
    case SheetSide::Top:
      return painter.drawLine(QPointF(at, r.bottom()), QPointF(at, r.bottom() - size));
    case SheetSide::Bottom:
      return painter.drawLine(QPointF(at, r.top()), QPointF(at, r.top() + size));
    case SheetSide::Left:
      return painter.drawLine(QPointF(r.right(), at), QPointF(r.right() - size, at));
    case SheetSide::Right:
      return painter.drawLine(QPointF(r.left(), at), QPointF(r.left() + size, at));
  }
}

void paintNumber(QPainter& painter, const Ruler& ruler, double at, double number) {
  constexpr double kReach = 40;
  const QString words = QString::number(std::lround(number));
  const QRectF& r = ruler.area;
  const double half = r.height() < r.width() ? r.height() : r.width();
  painter.save();
  if (isLevel(ruler.border)) {
    painter.translate(at, ruler.border == SheetSide::Top ? r.top() + 8 : r.bottom() - 8);
  } else {
    painter.translate(ruler.border == SheetSide::Left ? r.left() + 8 : r.right() - 8, at);
    painter.rotate(-90);
  }
  painter.drawText(QRectF(-kReach, -half / 2, 2 * kReach, half), Qt::AlignCenter, words);
  painter.restore();
}

void paintMarks(QPainter& painter, const Ruler& ruler, const SheetCamera& camera, Unit unit) {
  const Marks marks = marksFor(unit, camera.scale());
  const double longest = isLevel(ruler.border) ? ruler.sheetWidth : ruler.sheetHeight;
  const double from = isLevel(ruler.border) ? ruler.area.left() : ruler.area.top();
  const double to = isLevel(ruler.border) ? ruler.area.right() : ruler.area.bottom();
  const int count = static_cast<int>(std::floor(longest / marks.step + 1e-6));
  for (int i = 0; i <= count; ++i) {
    const double at = positionOf(ruler, camera, i * marks.step);
    if (at < from || at > to) continue;
    const bool labelled = i % marks.perLabel == 0;
    paintMark(painter, ruler, at, labelled ? 9 : (i % marks.perMiddle == 0 ? 6 : 3));
    const int label = i / marks.perLabel;
    if (labelled) paintNumber(painter, ruler, at, label * marks.labelled);
  }
}

void paintPointer(QPainter& painter, const Ruler& ruler, QPointF mouse) {
  painter.setPen(QPen(theme().accent, 1.5));
  paintMark(painter, ruler, isLevel(ruler.border) ? mouse.x() : mouse.y(), kRulerThickness);
}

}  // namespace

void paintRuler(QPainter& painter, const Ruler& ruler, const SheetCamera& camera, Unit unit,
                std::optional<QPointF> mouse) {
  painter.save();
  painter.setClipRect(ruler.area);
  painter.fillRect(ruler.area, theme().surface);
  QFont font = painter.font();
  font.setPixelSize(11);
  painter.setFont(font);
  painter.setPen(QPen(theme().quietInk, 1));
  paintMarks(painter, ruler, camera, unit);
  if (mouse) paintPointer(painter, ruler, *mouse);
  painter.restore();
}

}  // namespace creasewright
