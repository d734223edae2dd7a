#pragma once

#include "tools/edit_tool.h"

namespace creasewright {

/// Scores across a panel: a click makes a level score, with Shift an upright one; a pull from one
/// edge to another scores between them.
class SplitTool : public EditTool {
  Q_DECLARE_TR_FUNCTIONS(SplitTool)

 public:
  SplitTool() : EditTool({"split"}) {}

  [[nodiscard]] QString name() const override { return tr("Score across a panel"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("split"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_C; }
  [[nodiscard]] QString hint() const override;

  bool press(SheetView& sheet, const QMouseEvent& event) override;
  void move(SheetView& sheet, const QMouseEvent& event, bool held) override;
  void release(SheetView& sheet, const QMouseEvent& event) override;
  void click(SheetView& sheet, const QMouseEvent& event) override;
  bool keyPress(SheetView& sheet, const QKeyEvent& event) override;
  void sheetChanged(SheetView& sheet) override;
  void paint(SheetView& sheet, QPainter& painter) override;

 private:
  std::optional<EditTarget> taken_;
  QPointF pressed_;
  QPointF mouse_;
};

}  // namespace creasewright
