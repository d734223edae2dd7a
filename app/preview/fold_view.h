#pragma once

#include <QActionGroup>
#include <QWidget>
#include <optional>

#include "folding/surfaces/scene.h"
#include "pages/gift.h"
#include "preview/paint_fold.h"
#include "session/design_session.h"

namespace creasewright {

/// The folded piece, turned freely: drag with the mouse, arrow keys by 5 degrees, Home for the
/// standard view, wheel to come closer; the menu of the right button and the keys 1 to 3 look at it
/// from the front, from above, and at both and a side, the keys 4 to 6 open the finished gift. The
/// face under the mouse is lit in all views, a click keeps it.
class FoldView : public QWidget {
  Q_OBJECT

 public:
  explicit FoldView(DesignSession& session, QWidget* parent = nullptr);

  /// 0 flat .. 1 folded; folded, a piece of the box is shown in the finished gift.
  void setProgress(double progress);
  [[nodiscard]] double progress() const { return progress_; }
  /// The gift while it is put together, once all is folded; nothing = as it is finished.
  void setGift(std::optional<GiftState> state);
  /// How far the finished gift is open: kClosed .. kOpen.
  void setOpening(double opening);
  [[nodiscard]] double opening() const { return opening_; }
  /// Actions that open and close it, one of which is checked.
  [[nodiscard]] QList<QAction*> openings() const { return openings_->actions(); }
  void showPiece(int index);
  void resetView();
  [[nodiscard]] const View& view() const { return view_; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  [[nodiscard]] QSize sizeHint() const override { return {420, 320}; }

 private:
  void addViews();
  void addOpenings();
  void makeScene();
  void lookFrom(const View& view);
  void turn(double turnDegrees, double tiltDegrees);
  void redraw();
  void makePicture();
  [[nodiscard]] const BuiltPiece* piece() const;
  [[nodiscard]] FoldPlace place() const;
  [[nodiscard]] FoldLight light() const;
  /// What is seen at a pixel, as all views know it.
  [[nodiscard]] Place placeAt(QPointF pixel);

  DesignSession& session_;
  View view_ = standardView();
  double progress_ = 1;
  double zoom_ = 1;
  double opening_ = kClosed;
  std::optional<GiftState> state_;
  QActionGroup* openings_;
  int piece_ = 0;
  QPointF last_;
  QPointF pressed_;
  std::optional<Gift> gift_;                            // found when it is first drawn
  GiftScene scene_;                                     // what is in the picture
  std::optional<std::optional<ProductInBox>> product_;  // found when it is first drawn
  double reach_ = 0;                    // mm across the picture at most, however it is turned
  std::optional<FoldPicture> picture_;  // made anew when something changed
};

}  // namespace creasewright
