#include "panels/keeps_up.h"

#include <QEvent>
#include <QWidget>
#include <utility>

namespace creasewright {

KeepsUp::KeepsUp(DesignSession& session, QWidget& list, std::function<void()> show, Start start)
    : QObject(&list), session_(session), list_(list), show_(std::move(show)), start_(start) {
  constexpr int kRest = 150;  // ms
  rest_.setSingleShot(true);
  rest_.setInterval(kRest);
  connect(&rest_, &QTimer::timeout, this, &KeepsUp::showNow);
  connect(&session_, &DesignSession::changed, this, &KeepsUp::refresh);
  connect(&session_, &DesignSession::unitChanged, this, &KeepsUp::refresh);
  list_.installEventFilter(this);
  refresh();
}

bool KeepsUp::eventFilter(QObject* watched, QEvent* event) {
  if (stale_ && watched == &list_ && event->type() == QEvent::Show) showNow();
  return QObject::eventFilter(watched, event);
}

void KeepsUp::refresh() {
  stale_ = true;
  // A window that is not there yet says nothing of what will be seen.
  const bool hidden = start_ == Start::WhenSeen || list_.window()->isVisible();
  if (hidden && !list_.isVisible()) return;
  if (session_.isInHand()) return rest_.start();
  showNow();
}

void KeepsUp::showNow() {
  rest_.stop();
  stale_ = false;
  show_();
}

}  // namespace creasewright
