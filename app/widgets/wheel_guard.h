#pragma once

#include <QObject>

namespace creasewright {

/// Whoever scrolls past a field must not change it. In every window of the program, also those made
/// later: the wheel gives no field the focus, never turns a closed list, and reaches a number field
/// only when the person has put the cursor there; else what lies around the field scrolls.
class WheelGuard : public QObject {
  Q_OBJECT

 public:
  /// Guards until `parent` is gone.
  explicit WheelGuard(QObject* parent);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace creasewright
