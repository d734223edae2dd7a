#pragma once

#include <QCoreApplication>
#include <optional>

#include "scene/sheet_tool.h"
#include "tools/snap.h"

namespace creasewright {

/// Measures between two places or lines of the net: a click on the first, a click on the second.
/// What the pointer catches is marked; Alt catches nothing but lines and corners. Esc begins anew.
class MeasureTool : public SheetTool {
  Q_DECLARE_TR_FUNCTIONS(MeasureTool)

 public:
  [[nodiscard]] QString name() const override { return tr("Measure"); }
  [[nodiscard]] QString icon() const override { return QStringLiteral("measure"); }
  [[nodiscard]] Qt::Key key() const override { return Qt::Key_M; }
  [[nodiscard]] QString hint() const override;

  void activate(SheetView& sheet) override;
  void deactivate(SheetView& sheet) override { sheetChanged(sheet); }
  void move(SheetView& sheet, const QMouseEvent& event, bool held) override;
  void click(SheetView& sheet, const QMouseEvent& event) override;
  void leave(SheetView& sheet) override;
  bool keyPress(SheetView& sheet, const QKeyEvent& event) override;
  void sheetChanged(SheetView& sheet) override;
  void paint(SheetView& sheet, QPainter& painter) override;

  /// What is measured now, in words; empty before the first click.
  [[nodiscard]] QString reading(const SheetView& sheet) const;

 private:
  [[nodiscard]] Snap snap(const SheetView& sheet, const QMouseEvent& event) const;
  [[nodiscard]] std::optional<Measurement> measured() const;

  std::optional<Snap> first_;
  std::optional<Snap> second_;
  std::optional<Snap> pointer_;
};

}  // namespace creasewright
