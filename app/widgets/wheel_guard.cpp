#include "widgets/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QEvent>

#include "widgets/length_edit.h"

namespace creasewright {

WheelGuard::WheelGuard(QWidget* window) : QObject(window), window_(window) {
  qApp->installEventFilter(this);
}

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::Wheel) {
    return QObject::eventFilter(watched, event);
  }
  auto* widget = qobject_cast<QWidget*>(watched);
  const bool field = qobject_cast<QComboBox*>(widget) != nullptr ||
                     qobject_cast<QAbstractSpinBox*>(widget) != nullptr ||
                     qobject_cast<LengthEdit*>(widget) != nullptr;
  if (!field || widget->hasFocus() || !window_->isAncestorOf(widget)) {
    return QObject::eventFilter(watched, event);
  }
  QCoreApplication::sendEvent(widget->parentWidget(), event);
  return true;
}

}  // namespace creasewright
