#pragma once

#include <QWidget>
#include <functional>
#include <optional>

#include "scene/dimension_layer.h"
#include "scene/sheet_camera.h"
#include "scene/sheet_tool.h"
#include "session/design_session.h"

namespace creasewright {

/// The sheet on the bench with the net on it and a ruler on every side. Zoom with the wheel or
/// + and -, move it with the arrow keys, the middle button, while space is held, or where the tool
/// takes hold of nothing; 0 shows the whole sheet. Everything else is the tool's.
class SheetView : public QWidget {
  Q_OBJECT

 public:
  explicit SheetView(DesignSession& session, QWidget* parent = nullptr);

  void zoomIn();
  void zoomOut();
  void fit();
  /// Which piece of the design is shown.
  void showPiece(int index);
  [[nodiscard]] int shownPiece() const { return piece_; }

  /// `tool` must outlive the sheet, or give way to another one (or none) first.
  void setTool(SheetTool* tool);
  [[nodiscard]] SheetTool* tool() const { return tool_; }

  // What a tool sees.
  [[nodiscard]] DesignSession& session() const { return session_; }
  [[nodiscard]] const BuiltPiece* piece() const;
  [[nodiscard]] const SheetCamera& camera() const { return camera_; }
  [[nodiscard]] QRectF bench() const;  ///< within the rulers, pixels
  [[nodiscard]] std::vector<DimensionLabel> dimensionLabels() const;
  /// What is under the mouse, on the sheet, beside it, or on a ruler.
  [[nodiscard]] Place placeAt(QPointF at) const;

  // What a tool may ask.
  void say(const QString& words) { emit hovered(words); }
  /// Changes the design so that the first panel stays where it is on screen.
  void keepInPlace(const std::function<void()>& change);
  [[nodiscard]] bool isWholeShown() const { return fitted_; }

 signals:
  /// Words for the status line, or empty.
  void hovered(const QString& words);
  void toolChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void keyReleaseEvent(QKeyEvent* event) override;

 private:
  void zoom(double factor, QPointF at);
  void pan(QPointF by);
  bool viewKey(int key);
  [[nodiscard]] bool isLit(const DimensionLabel& label) const;
  [[nodiscard]] QPointF firstPanelOnScreen() const;
  void designChanged();
  void tellTool();
  void paintRulers(QPainter& painter);

  DesignSession& session_;
  SheetCamera camera_;
  SheetTool* tool_ = nullptr;
  int piece_ = 0;
  bool fitted_ = true;  // follow the sheet until the person zooms or moves it
  bool space_ = false;
  bool held_ = false;  // by the tool
  std::optional<QPointF> mouse_;
  std::optional<QPointF> dragFrom_;
  QPointF pressed_;
};

}  // namespace creasewright
