#include "widgets/wheel_guard.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QEvent>

namespace creasewright {

namespace {

bool isField(const QWidget* widget) {
  return qobject_cast<const QComboBox*>(widget) != nullptr ||
         qobject_cast<const QAbstractSpinBox*>(widget) != nullptr;
}

bool mayTurn(const QWidget* field) {
  return qobject_cast<const QComboBox*>(field) == nullptr && field->hasFocus();
}

}  // namespace

WheelGuard::WheelGuard(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::Wheel && event->type() != QEvent::Polish) return false;
  auto* widget = qobject_cast<QWidget*>(watched);
  if (!isField(widget)) return false;
  if (event->type() == QEvent::Polish) {
    // Qt hands the focus over before any filter sees the wheel, so the field must not want it.
    if (widget->focusPolicy() == Qt::WheelFocus) widget->setFocusPolicy(Qt::StrongFocus);
    return false;
  }
  if (mayTurn(widget)) return false;
  QCoreApplication::sendEvent(widget->parentWidget(), event);
  return true;
}

}  // namespace creasewright
