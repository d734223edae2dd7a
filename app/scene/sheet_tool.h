#pragma once

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QString>

namespace creasewright {

class SheetView;

/// What the hand on the sheet does. One tool at a time gets the mouse and the keys; it knows the
/// sheet, no window and no other tool.
class SheetTool {
 public:
  SheetTool() = default;
  SheetTool(const SheetTool&) = delete;
  SheetTool& operator=(const SheetTool&) = delete;
  virtual ~SheetTool() = default;

  [[nodiscard]] virtual QString name() const = 0;
  [[nodiscard]] virtual QString icon() const = 0;  ///< of the program's own icons
  [[nodiscard]] virtual Qt::Key key() const = 0;   ///< chooses it while the sheet has the focus
  /// What it wants next, for the status line.
  [[nodiscard]] virtual QString hint() const = 0;

  virtual void activate(SheetView& /*sheet*/) {}
  virtual void deactivate(SheetView& /*sheet*/) {}
  /// Whether the tool takes hold of something; else the hand moves the sheet.
  virtual bool press(SheetView& /*sheet*/, const QMouseEvent& /*event*/) { return false; }
  /// The mouse moves; `held` = the tool has taken hold of something.
  virtual void move(SheetView& /*sheet*/, const QMouseEvent& /*event*/, bool /*held*/) {}
  /// What was held is let go.
  virtual void release(SheetView& /*sheet*/, const QMouseEvent& /*event*/) {}
  /// Pressed and released in one place.
  virtual void click(SheetView& /*sheet*/, const QMouseEvent& /*event*/) {}
  virtual void leave(SheetView& /*sheet*/) {}
  /// Whether the key was for the tool.
  virtual bool keyPress(SheetView& /*sheet*/, const QKeyEvent& /*event*/) { return false; }
  /// The design, the piece or the unit shown is another one.
  virtual void sheetChanged(SheetView& /*sheet*/) {}
  /// On top of the net, within the bench.
  virtual void paint(SheetView& /*sheet*/, QPainter& /*painter*/) {}
};

}  // namespace creasewright
