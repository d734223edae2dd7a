#include "widgets/undo_keys.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace creasewright {

namespace {

/// The line in which a field's text is typed, or nullptr.
const QLineEdit* lineOf(const QObject* field) {
  if (qobject_cast<const QAbstractSpinBox*>(field) != nullptr)
    return field->findChild<QLineEdit*>();
  return qobject_cast<const QLineEdit*>(field);
}

bool wantsUndo(const QObject* field) {
  if (const auto* text = qobject_cast<const QPlainTextEdit*>(field))
    return text->document()->isUndoAvailable();
  const QLineEdit* line = lineOf(field);
  return line == nullptr || (line->isModified() && line->isUndoAvailable());
}

bool wantsRedo(const QObject* field) {
  if (const auto* text = qobject_cast<const QPlainTextEdit*>(field))
    return text->document()->isRedoAvailable();
  const QLineEdit* line = lineOf(field);
  return line == nullptr || line->isRedoAvailable();
}

}  // namespace

UndoKeys::UndoKeys(QObject* parent) : QObject(parent) { qApp->installEventFilter(this); }

bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::ShortcutOverride) return false;
  const auto* key = static_cast<const QKeyEvent*>(event);
  const bool left = (key->matches(QKeySequence::Undo) && !wantsUndo(watched)) ||
                    (key->matches(QKeySequence::Redo) && !wantsRedo(watched));
  if (left) event->ignore();
  return left;
}

}  // namespace creasewright
