#pragma once

#include <QAction>
#include <QUndoStack>

namespace creasewright {

/// Undo and redo of a history that name what they act on: `Undo: product`, or only `Undo`.
QAction* undoAction(QUndoStack& history, QObject* parent);
QAction* redoAction(QUndoStack& history, QObject* parent);

}  // namespace creasewright
