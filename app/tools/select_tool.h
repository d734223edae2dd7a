#pragma once

#include <QCoreApplication>
#include <QPointer>
#include <optional>

#include "scene/net_pull.h"
#include "scene/sheet_tool.h"
#include "session/place.h"

namespace creasewright {

class DimensionEntry;

/// What is under the mouse is lit in all views; a click keeps it, a click on the empty bench lets
/// it go, a click on a dimension lets it be typed. A line or a corner that follows from measures
/// can be pulled, by the mouse, or a kept line by the arrow keys: Ctrl leaves the product's room as
/// it is, Alt leaves the tool grid, a number chooses another measure, Esc puts it back.
class SelectTool : public SheetTool {
  Q_DECLARE_TR_FUNCTIONS(SelectTool)

 public:
  [[nodiscard]] QString name() const override { return tr("Select and pull"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("select"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_S; }
  [[nodiscard]] QString hint() const override;

  void deactivate(SheetView& sheet) override;
  bool press(SheetView& sheet, const QMouseEvent& event) override;
  void move(SheetView& sheet, const QMouseEvent& event, bool held) override;
  void release(SheetView& sheet, const QMouseEvent& event) override;
  void click(SheetView& sheet, const QMouseEvent& event) override;
  void leave(SheetView& sheet) override;
  bool keyPress(SheetView& sheet, const QKeyEvent& event) override;
  void sheetChanged(SheetView& sheet) override;
  void paint(SheetView& sheet, QPainter& painter) override;

 private:
  void hover(SheetView& sheet, QPointF at);
  [[nodiscard]] QString wordsOf(const Place& place) const;
  QString pullWords(SheetView& sheet, const std::vector<Movable>& things);
  void pullTo(SheetView& sheet, QPointF at, Qt::KeyboardModifiers keys);
  bool pullKey(SheetView& sheet, const QKeyEvent& event);
  bool pullByArrow(SheetView& sheet, const QKeyEvent& event);
  bool typeDimension(SheetView& sheet, QPointF at);
  void paintName(SheetView& sheet, QPainter& painter);

  Place hovered_;
  std::vector<Movable> things_;  // under the mouse, to take hold of
  std::optional<NetPull> pull_;
  bool pulled_ = false;  // the hand has moved
  bool wholeBefore_ = true;
  QPointF pressed_;
  QPointF mouse_;
  QPointer<QWidget> entry_;
};

}  // namespace creasewright
