#pragma once

#include <QToolBar>

#include "session/design_session.h"

class QMenu;

namespace creasewright {

class Columns;
class FileActions;

/// File, undo, redo, units, tool grid, scoring board, zoom, and the one primary button.
class ToolBar : public QToolBar {
  Q_OBJECT

 public:
  ToolBar(DesignSession& session, FileActions& files, Columns& columns, QMenu* makeMenu,
          QWidget* parent);

 private:
  void addFile(FileActions& files);
  void addHistory();
  void addUnits();
  void addGrid();
  void addBoard();
  void addZoom(Columns& columns);
  void addMake(QMenu* menu);

  DesignSession& session_;
};

}  // namespace creasewright
