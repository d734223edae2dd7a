#include "tools/split_tool.h"

#include <QApplication>

#include "scene/sheet_view.h"
#include "widgets/theme.h"

namespace creasewright {

QString SplitTool::hint() const {
  return tr(
      "Click a panel for a level score, with Shift for an upright one, or pull from one of its "
      "edges to another.");
}

bool SplitTool::press(SheetView& sheet, const QMouseEvent& event) {
  pressed_ = mouse_ = event.position();
  taken_ = targetAt(sheet, pressed_);
  return taken_.has_value();
}

void SplitTool::move(SheetView& sheet, const QMouseEvent& event, bool held) {
  mouse_ = event.position();
  if (!held) EditTool::move(sheet, event, held);
}

void SplitTool::release(SheetView& sheet, const QMouseEvent& event) {
  const auto target = std::exchange(taken_, std::nullopt);
  const QPointF to = event.position();
  if (!target || (to - pressed_).manhattanLength() < QApplication::startDragDistance()) return;
  add(sheet, splitBetween(kind(), *sheet.piece(), *target, sheet.camera().toSheet(pressed_),
                          sheet.camera().toSheet(to), sheet.session().design().grid));
}

void SplitTool::click(SheetView& sheet, const QMouseEvent& event) {
  const auto target = targetAt(sheet, event.position());
  if (!target) {
    sheet.say(hint());
    return;
  }
  const Point at = sheet.camera().toSheet(event.position());
  const bool upright = event.modifiers().testFlag(Qt::ShiftModifier);
  const Point to = at + (upright ? Point{0, -1} : Point{1, 0});
  add(sheet, splitBetween(kind(), *sheet.piece(), *target, at, to, sheet.session().design().grid));
}

bool SplitTool::keyPress(SheetView& sheet, const QKeyEvent& event) {
  if (event.key() != Qt::Key_Escape || !taken_) return EditTool::keyPress(sheet, event);
  taken_.reset();
  sheet.update();
  return true;
}

void SplitTool::sheetChanged(SheetView& sheet) {
  taken_.reset();
  EditTool::sheetChanged(sheet);
}

void SplitTool::paint(SheetView& sheet, QPainter& painter) {
  EditTool::paint(sheet, painter);
  if (!taken_) return;
  painter.setPen(QPen(theme().accent, 2, Qt::DashLine));
  painter.drawLine(pressed_, mouse_);
}

}  // namespace creasewright
