#pragma once

#include <QMainWindow>

#include "session/autosave.h"
#include "session/design_session.h"

namespace creasewright {

class Columns;
class FileActions;

/// The window: the menus and the toolbar over one workbench.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens `file`, or offers work left by a crash, or stays with a fresh design.
  void begin(const QString& file);

  [[nodiscard]] DesignSession& session() { return session_; }
  [[nodiscard]] Columns& columns() { return *columns_; }
  [[nodiscard]] FileActions& files() { return *files_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void makeMenus();
  void makeEditMenu();
  void makeViewMenu();
  void makeHelpMenu();
  void showTitle();
  void offerRecovery();

  DesignSession session_;
  Autosave autosave_;
  Columns* columns_;
  FileActions* files_;
};

}  // namespace creasewright
