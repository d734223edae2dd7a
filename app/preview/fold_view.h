#pragma once

#include <QActionGroup>
#include <QWidget>
#include <optional>
#include <vector>

#include "folding/surfaces/scene.h"
#include "pages/gift_sight.h"
#include "pages/gift_strip.h"
#include "preview/paint_fold.h"
#include "session/design_session.h"

class QTouchEvent;

namespace creasewright {

/// The folded piece, turned freely: drag with the mouse or a finger, arrow keys by 5 degrees, Home
/// for the standard view, wheel or two fingers to come closer; the menu of the right button and the
/// keys 1 to 3 look at it from the front, from above, and at both and a side, the keys 4 to 6 open
/// the finished gift. The face under the mouse is lit in all views, a click keeps it.
class FoldView : public QWidget {
  Q_OBJECT

 public:
  explicit FoldView(DesignSession& session, QWidget* parent = nullptr);

  /// How many stops of the strip are done: 0 flat .. kFinished.
  void setDone(double done);
  [[nodiscard]] double done() const { return done_; }
  /// The stops of the piece that is shown.
  [[nodiscard]] const GiftStrip& strip();
  /// What is seen now.
  [[nodiscard]] GiftSight sight() const;
  /// How far the finished gift is open: kClosed .. kOpen.
  void setOpening(double opening);
  [[nodiscard]] double opening() const { return opening_; }
  /// Actions that open and close it, one of which is checked.
  [[nodiscard]] QList<QAction*> openings() const { return openings_->actions(); }
  void showPiece(int index);
  void resetView();
  [[nodiscard]] const View& view() const { return view_; }

 protected:
  /// Touches.
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  [[nodiscard]] QSize sizeHint() const override { return {420, 320}; }

 private:
  /// What touches it, and has since the first finger came down.
  struct Fingers {
    std::vector<QPointF> at;
    QPointF first;
    bool tap = true;  ///< one finger that stayed where it was
  };
  void addViews();
  void addOpenings();
  void lookFrom(const View& view);
  void touch(QTouchEvent& event);
  /// Whether touches have told already what a mouse event tells.
  [[nodiscard]] bool isToldByTouch(const QMouseEvent& event) const;
  void comeCloser(double factor);
  void turn(double turnDegrees, double tiltDegrees);
  void showScene();  // another one
  void redraw();
  void makePicture();
  void clearCanvas(double ratio);
  /// Of BuiltDesign::pieces; -1 = there is none.
  [[nodiscard]] int shownIndex() const;
  /// Picture coordinates (mm, y up) to pixels.
  [[nodiscard]] QTransform place() const;
  [[nodiscard]] FoldLight light() const;
  /// What is seen at a pixel, as all views know it.
  [[nodiscard]] Place placeAt(QPointF pixel);

  DesignSession& session_;
  View view_ = standardView();
  double done_ = kFinished;
  double zoom_ = 1;
  double opening_ = kClosed;
  QActionGroup* openings_;
  int piece_ = 0;
  QPointF last_;
  QPointF pressed_;
  std::optional<Fingers> fingers_;  // while some touch it
  bool touched_ = false;            // ever
  std::optional<GiftStrip> strip_;  // found when it is first drawn
  std::optional<GiftScene> scene_;  // what is in the picture, however it is turned
  double reach_ = 0;                // mm across the picture at most, however it is turned
  GroundShadow shadow_;
  std::optional<FoldPicture> picture_;  // made anew when something changed
  QImage canvas_;                       // kept, since new memory takes as long as the painting
};

}  // namespace creasewright
