#pragma once

#include <QTimer>
#include <QWidget>

#include "session/design_session.h"

class QLabel;
class QSlider;
class QToolButton;

namespace creasewright {

class FoldView;

/// The folded view with the strip of fold stages under it, and of what is done to the folded pieces
/// until the gift is finished; it plays from flat to the gift.
class FoldPanel : public QWidget {
  Q_OBJECT

 public:
  explicit FoldPanel(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] FoldView& view() { return *view_; }
  [[nodiscard]] QSlider& slider() { return *slider_; }
  void showPiece(int index);
  [[nodiscard]] int piece() const { return piece_; }

 private:
  void designChanged();
  void goTo(const Place& place);
  void sliderMoved(int value);
  /// Goes to the end of the stage before or after the present one.
  void stepStage(int by);
  /// From where it is, or from flat once all is folded; pressed again it stops.
  void play(bool on);
  void playOn();
  [[nodiscard]] QString stageWords(int value) const;

  DesignSession& session_;
  FoldView* view_;
  QSlider* slider_;
  QLabel* stage_;
  QToolButton* play_ = nullptr;
  QTimer tick_;
  int piece_ = 0;
  std::string style_;  // whose stages the strip has
};

}  // namespace creasewright
