#pragma once

#include <QToolBar>

#include "session/design_session.h"

class QMenu;

namespace creasewright {

class Columns;
class FileActions;

/// File and papers, undo, redo, units, tool grid, scoring board, zoom.
class ToolBar : public QToolBar {
  Q_OBJECT

 public:
  ToolBar(DesignSession& session, FileActions& files, Columns& columns, QMenu* papers,
          QWidget* parent);

 private:
  void addFile(FileActions& files, QMenu* papers);
  void addHistory();
  void addUnits();
  void addGrid();
  void addBoard();
  void addZoom(Columns& columns);

  DesignSession& session_;
};

}  // namespace creasewright
