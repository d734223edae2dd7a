#pragma once

#include <QMainWindow>

#include "session/autosave.h"
#include "session/design_session.h"

namespace creasewright {

class Columns;
class FileActions;
class StatusLine;

/// The window: the menus and the toolbar over one workbench.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  explicit MainWindow(QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens `file`; with an empty one it stays with a fresh design.
  void begin(const QString& file);
  /// Asks about each work that a crash has left, and shows what is wanted: here while the window
  /// holds nothing yet, else in a window of its own.
  void offer(const std::vector<Recovered>& works);
  /// Offers the sample gifts at the first start, where no other work is open.
  void welcome();

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
  [[nodiscard]] bool wants(const Recovered& work);
  void takeUp(const Recovered& work);

  DesignSession session_;
  Autosave autosave_;
  Columns* columns_;
  FileActions* files_;
  StatusLine* status_;
};

/// Opens one more window, which goes away when it is closed; for `file` see MainWindow::begin.
MainWindow* openWindow(const QString& file = {});

}  // namespace creasewright
