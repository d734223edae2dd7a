#pragma once

#include <QObject>

namespace creasewright {

/// A text field claims the keys of undo and redo for itself, also when it has nothing to undo. With
/// this, a field that has nothing of its own to undo leaves them to the window's history.
class UndoKeys : public QObject {
  Q_OBJECT

 public:
  /// Works in every window until `parent` is gone.
  explicit UndoKeys(QObject* parent);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
};

}  // namespace creasewright
