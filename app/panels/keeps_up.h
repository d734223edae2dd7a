#pragma once

#include <QObject>
#include <QTimer>
#include <functional>

#include "session/design_session.h"

class QWidget;

namespace creasewright {

/// Keeps a list up with the design: it is shown anew at every change; while a line is pulled, when
/// the hand rests; and where the window does not show it, when it does again. A list that takes
/// long is not even made before it is seen.
class KeepsUp : public QObject {
  Q_OBJECT

 public:
  enum class Start { AtOnce, WhenSeen };
  KeepsUp(DesignSession& session, QWidget& list, std::function<void()> show,
          Start start = Start::AtOnce);

  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void refresh();
  void showNow();

  DesignSession& session_;
  QWidget& list_;
  std::function<void()> show_;
  Start start_;
  QTimer rest_;  ///< runs until the hand rests
  bool stale_ = false;
};

}  // namespace creasewright
