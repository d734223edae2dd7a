#pragma once

#include <QObject>

namespace creasewright {

/// Whoever scrolls past a field must not change it: the wheel reaches choices and number fields
/// only while they have the focus, else what lies around them scrolls. For one window's fields,
/// also those made later.
class WheelGuard : public QObject {
  Q_OBJECT

 public:
  explicit WheelGuard(QWidget* window);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* window_;
};

}  // namespace creasewright
