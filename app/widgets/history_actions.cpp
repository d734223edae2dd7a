#include "widgets/history_actions.h"

#include <QCoreApplication>

namespace creasewright {

namespace {

struct HistoryTr {
  Q_DECLARE_TR_FUNCTIONS(history)
};

}  // namespace

QAction* undoAction(QUndoStack& history, QObject* parent) {
  auto* action = new QAction(parent);
  const auto name = [action](const QString& words) {
    action->setText(words.isEmpty() ? HistoryTr::tr("Undo") : HistoryTr::tr("Undo: %1").arg(words));
  };
  name(history.undoText());
  action->setEnabled(history.canUndo());
  QObject::connect(&history, &QUndoStack::undoTextChanged, action, name);
  QObject::connect(&history, &QUndoStack::canUndoChanged, action, &QAction::setEnabled);
  QObject::connect(action, &QAction::triggered, &history, &QUndoStack::undo);
  return action;
}

QAction* redoAction(QUndoStack& history, QObject* parent) {
  auto* action = new QAction(parent);
  const auto name = [action](const QString& words) {
    action->setText(words.isEmpty() ? HistoryTr::tr("Redo") : HistoryTr::tr("Redo: %1").arg(words));
  };
  name(history.redoText());
  action->setEnabled(history.canRedo());
  QObject::connect(&history, &QUndoStack::redoTextChanged, action, name);
  QObject::connect(&history, &QUndoStack::canRedoChanged, action, &QAction::setEnabled);
  QObject::connect(action, &QAction::triggered, &history, &QUndoStack::redo);
  return action;
}

}  // namespace creasewright
