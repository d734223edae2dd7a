#include "tools/measure_tool.h"

#include <QLocale>
#include <cmath>

#include "bridge/text.h"
#include "scene/note_box.h"
#include "scene/sheet_view.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kReach = 8;  // pixels

/// A mark that says what was caught: a square at a corner, a cross at a crossing, a triangle in the
/// middle, a ring on a line, a plus on the grid.
void paintMark(QPainter& painter, const Snap& snap, QPointF at) {
  constexpr double kSize = 5;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme().accent, 1.6));
  const QPointF x(kSize, 0);
  const QPointF y(0, kSize);
  switch (snap.kind) {
    case SnapKind::Corner:
      painter.drawRect(QRectF(at - x - y, at + x + y));
      return;
    case SnapKind::Crossing:
      painter.drawLine(at - x - y, at + x + y);
      painter.drawLine(at - x + y, at + x - y);
      return;
    case SnapKind::Middle:
      painter.drawPolygon(QPolygonF{at - y, at + x + y, at - x + y});
      return;
    case SnapKind::Line:
      painter.drawEllipse(at, kSize, kSize);
      return;
    case SnapKind::Grid:
      painter.drawLine(at - x, at + x);
      painter.drawLine(at - y, at + y);
      return;
    case SnapKind::Nothing:
      painter.drawPoint(at);
      return;
  }
}

}  // namespace

QString MeasureTool::hint() const {
  if (!first_) return tr("Click the first place or line to measure from.");
  if (!second_) return tr("Click the second place or line; Esc begins anew.");
  return tr("Click to measure anew.");
}

void MeasureTool::activate(SheetView& sheet) { sheet.setCursor(Qt::CrossCursor); }

Snap MeasureTool::snap(const SheetView& sheet, const QMouseEvent& event) const {
  const ToolGrid grid = event.modifiers().testFlag(Qt::AltModifier) ? ToolGrid::none()
                                                                    : sheet.session().design().grid;
  return snapAt(*sheet.piece(), sheet.camera().toSheet(event.position()),
                kReach / sheet.camera().scale(), grid);
}

void MeasureTool::move(SheetView& sheet, const QMouseEvent& event, bool) {
  sheet.setCursor(Qt::CrossCursor);
  const bool there = sheet.piece() != nullptr && sheet.bench().contains(event.position());
  pointer_ = there ? std::optional(snap(sheet, event)) : std::nullopt;
  const QString words = reading(sheet);
  sheet.say(words.isEmpty() ? hint() : words + QStringLiteral("  ·  ") + hint());
}

void MeasureTool::click(SheetView& sheet, const QMouseEvent& event) {
  if (sheet.piece() == nullptr || !sheet.bench().contains(event.position())) return;
  const Snap here = snap(sheet, event);
  if (!first_ || second_) {
    first_ = here;
    second_.reset();
  } else {
    second_ = here;
  }
  pointer_ = here;
  const QString words = reading(sheet);
  sheet.say(words + QStringLiteral("  ·  ") + hint());
}

void MeasureTool::leave(SheetView&) { pointer_.reset(); }

bool MeasureTool::keyPress(SheetView& sheet, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !first_) return false;
  sheetChanged(sheet);
  sheet.say(hint());
  sheet.update();
  return true;
}

void MeasureTool::sheetChanged(SheetView&) {
  first_.reset();
  second_.reset();
  pointer_.reset();
}

std::optional<Measurement> MeasureTool::measured() const {
  if (!first_) return std::nullopt;
  const std::optional<Snap>& other = second_ ? second_ : pointer_;
  return other ? std::optional(measureBetween(*first_, *other)) : std::nullopt;
}

QString MeasureTool::reading(const SheetView& sheet) const {
  const auto found = measured();
  if (!found) return {};
  if (found->degrees)
    return tr("%1° between the lines").arg(QLocale().toString(*found->degrees, 'f', 1));
  const Unit unit = sheet.session().unit();
  const Length whole = Length::mm(found->distance);
  const Point way = found->to - found->from;
  if (std::abs(way.x) < 1e-6 || std::abs(way.y) < 1e-6) return lengthText(whole, unit);
  return tr("%1: %2 across, %3 up")
      .arg(lengthText(whole, unit), lengthText(Length::mm(std::abs(way.x)), unit),
           lengthText(Length::mm(std::abs(way.y)), unit));
}

void MeasureTool::paint(SheetView& sheet, QPainter& painter) {
  const auto pixel = [&](Point at) { return sheet.camera().toScreen(at); };
  painter.setRenderHint(QPainter::Antialiasing);
  if (const auto found = measured()) {
    painter.setPen(QPen(theme().accent, 1.6));
    painter.drawLine(pixel(found->from), pixel(found->to));
    paintNote(painter, reading(sheet),
              (pixel(found->from) + pixel(found->to)) / 2 + QPointF(12, 10), sheet.bench());
  }
  for (const auto& mark : {first_, second_ ? second_ : pointer_})
    if (mark) paintMark(painter, *mark, pixel(mark->at));
}

}  // namespace creasewright
