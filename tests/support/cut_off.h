#pragma once

#include <QAbstractScrollArea>
#include <QStringList>
#include <QTabBar>
#include <QWidget>

namespace creasewright {

inline bool insideScrollArea(const QWidget* widget) {
  for (const QWidget* up = widget->parentWidget(); up != nullptr; up = up->parentWidget()) {
    if (qobject_cast<const QAbstractScrollArea*>(up) != nullptr) {
      return true;
    }
  }
  return false;
}

/// Visible widgets that stick out of their parent, or are smaller than they need.
inline QStringList cutOff(const QWidget& window) {
  QStringList found;
  for (const QWidget* widget : window.findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->isWindow()) {
      continue;
    }
    const QString name =
        QString("%1 “%2”").arg(widget->metaObject()->className(), widget->accessibleName());
    // What scrolls may be longer than its view, but never wider.
    const QRect room = insideScrollArea(widget)
                           ? widget->parentWidget()->rect().adjusted(0, -10000, 0, 10000)
                           : widget->parentWidget()->rect();
    // Pages in true proportions may be wider than their view: they scroll both ways.
    const bool isPages = QByteArray(widget->metaObject()->className()).endsWith("PagePreview");
    if (!room.contains(widget->geometry()) && !isPages) {
      found += name + " sticks out";
    }
    if (const auto* tabs = qobject_cast<const QTabBar*>(widget);
        tabs != nullptr && !tabs->usesScrollButtons() && tabs->sizeHint().width() > tabs->width()) {
      found += name + " does not show all tabs";
    }
    const QSize least = widget->minimumSizeHint();
    // The arrows of a bar of tabs are as narrow as their style makes them.
    const bool isArrow = qobject_cast<const QTabBar*>(widget->parentWidget()) != nullptr;
    if (!insideScrollArea(widget) && !isArrow && least.isValid() &&
        (widget->width() < least.width() || widget->height() < least.height())) {
      found += name + " is too small";
    }
  }
  return found;
}

}  // namespace creasewright
