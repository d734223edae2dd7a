#pragma once

#include <QWidget>
#include <optional>

#include "scene/dimension_layer.h"
#include "scene/line_pull.h"
#include "scene/sheet_camera.h"
#include "session/design_session.h"

namespace creasewright {

/// The sheet on the bench with the net on it and a ruler on every side. Zoom with the wheel or
/// + and -, pan by dragging or with the arrow keys, 0 shows the whole sheet. What is under the
/// mouse is lit in all views; a click keeps it, a click on the empty bench lets it go. A line that
/// follows from a measure can be pulled, by the mouse, or once kept by the arrow keys: Ctrl leaves
/// the product's room as it is, Alt leaves the tool grid, a number chooses another measure, Esc
/// puts it back.
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
  [[nodiscard]] const SheetCamera& camera() const { return camera_; }
  [[nodiscard]] std::vector<DimensionLabel> dimensionLabels() const;

 signals:
  /// Words about the panel under the mouse, or empty.
  void hovered(const QString& words);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] const BuiltPiece* piece() const;
  [[nodiscard]] QRectF bench() const;
  void zoom(double factor, QPointF at);
  void pan(QPointF by);
  void hover(QPointF at);
  /// What is under the mouse, on the sheet, beside it, or on a ruler.
  [[nodiscard]] Place placeAt(QPointF at) const;
  [[nodiscard]] QString wordsOf(const Place& place) const;
  QString pullWords(QPointF at);
  [[nodiscard]] bool isLit(const DimensionLabel& label) const;
  void designChanged();
  /// Pulls as far as the mouse has gone; the first panel stays where it is on screen.
  void pullTo(QPointF at, Qt::KeyboardModifiers keys);
  bool pullKey(const QKeyEvent& event);
  bool pullByArrow(const QKeyEvent& event);
  [[nodiscard]] QPointF firstPanelOnScreen() const;
  void paintRulers(QPainter& painter);
  void paintPull(QPainter& painter);
  void paintName(QPainter& painter);

  DesignSession& session_;
  SheetCamera camera_;
  int piece_ = 0;
  bool fitted_ = true;  // follow the sheet until the person zooms or pans
  Place hovered_;
  std::optional<QPointF> mouse_;
  std::optional<QPointF> dragFrom_;
  QPointF pressed_;
  std::optional<LinePull> pull_;
  bool pulled_ = false;  // the hand has moved
  bool fittedBefore_ = true;
};

}  // namespace creasewright
