#include "panels/hover_light.h"

#include <QAbstractItemView>
#include <QEvent>

#include "session/design_session.h"

namespace creasewright {

namespace {

/// The list itself does not tell when the mouse has gone.
class LeaveWatch : public QObject {
 public:
  LeaveWatch(QAbstractItemView& list, DesignSession& session) : QObject(&list), session_(session) {
    list.viewport()->installEventFilter(this);
  }

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Leave || event->type() == QEvent::Hide) {
      session_.hoverHighlight({});
    }
    return false;
  }

 private:
  DesignSession& session_;
};

}  // namespace

void lightUnderMouse(QAbstractItemView& list, DesignSession& session) {
  list.setMouseTracking(true);
  new LeaveWatch(list, session);
  QObject::connect(&list, &QAbstractItemView::entered, &session, [&session](const QModelIndex& at) {
    session.hoverHighlight(at.data(Qt::UserRole).toStringList());
  });
  QObject::connect(&list, &QAbstractItemView::viewportEntered, &session,
                   [&session] { session.hoverHighlight({}); });
}

}  // namespace creasewright
