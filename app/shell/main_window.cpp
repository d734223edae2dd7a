#include "shell/main_window.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QFile>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QStatusBar>

#include "scene/sheet_view.h"
#include "session/preferences.h"
#include "shell/columns.h"
#include "shell/file_actions.h"
#include "shell/make_menu.h"
#include "shell/tool_bar.h"

namespace creasewright {

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      autosave_(session_, recoveryFolder()),
      columns_(new Columns(session_, this)),
      files_(new FileActions(session_, this)) {
  session_.setUnit(preferredUnit());
  setAcceptDrops(true);
  setMinimumSize(960, 560);
  setCentralWidget(columns_);
  makeMenus();
  statusBar()->setSizeGripEnabled(false);
  connect(columns_, &Columns::hovered, this,
          [this](const QString& words) { statusBar()->showMessage(words); });
  connect(&session_, &DesignSession::changed, this, &MainWindow::showTitle);
  connect(&session_, &DesignSession::fileChanged, this, &MainWindow::showTitle);
  showTitle();
  resize(QSize(1440, 900).boundedTo(screen()->availableSize()));
}

MainWindow::~MainWindow() {
  // A field that loses the focus still speaks to the session, so the fields go first.
  hide();
  qDeleteAll(findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
}

void MainWindow::begin(const QString& file) {
  if (!file.isEmpty()) {
    files_->open(file);
    return;
  }
  offerRecovery();
}

void MainWindow::makeMenus() {
  auto* fileMenu = menuBar()->addMenu(tr("&File"));
  files_->addTo(fileMenu);
  fileMenu->addSeparator();
  auto* make = new MakeMenu(session_, this);
  fileMenu->addActions(make->actions());
  fileMenu->addSeparator();
  auto* quit = fileMenu->addAction(tr("&Quit"), this, &QWidget::close);
  quit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Q));
  makeEditMenu();
  makeViewMenu();
  makeHelpMenu();
  addToolBar(new ToolBar(session_, *files_, *columns_, make, this));
}

void MainWindow::makeEditMenu() {
  auto* menu = menuBar()->addMenu(tr("&Edit"));
  auto* undo = session_.history().createUndoAction(this, tr("Undo"));
  undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
  auto* redo = session_.history().createRedoAction(this, tr("Redo"));
  redo->setShortcuts(
      {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
  menu->addActions({undo, redo});
}

void MainWindow::makeViewMenu() {
  auto* menu = menuBar()->addMenu(tr("&View"));
  SheetView* sheet = &columns_->sheet();
  menu->addAction(tr("Zoom in"), QKeySequence(Qt::CTRL | Qt::Key_Plus), sheet, &SheetView::zoomIn);
  menu->addAction(tr("Zoom out"), QKeySequence(Qt::CTRL | Qt::Key_Minus), sheet,
                  &SheetView::zoomOut);
  menu->addAction(tr("Show the whole sheet"), QKeySequence(Qt::CTRL | Qt::Key_0), sheet,
                  &SheetView::fit);
  menu->addSeparator();
  menu->addAction(tr("Styles for your product"), QKeySequence(Qt::CTRL | Qt::Key_G), columns_,
                  [this] { columns_->showGallery(true); });
  menu->addSeparator();
  auto* group = new QActionGroup(this);
  const std::pair<QString, ThemeChoice> choices[] = {{tr("As the system"), ThemeChoice::System},
                                                     {tr("Light"), ThemeChoice::Light},
                                                     {tr("Dark"), ThemeChoice::Dark}};
  for (const auto& [words, choice] : choices) {
    auto* action = menu->addAction(words);
    action->setCheckable(true);
    action->setChecked(choice == preferredTheme());
    group->addAction(action);
    connect(action, &QAction::triggered, this, [this, picked = choice] {
      setPreferredTheme(picked);
      applyTheme(*qApp, picked);
      update();
    });
  }
  menu->addSeparator();
  auto* languages = menu->addMenu(tr("Language"));
  const std::pair<QString, QString> names[] = {{tr("As the system"), {}},
                                               {QStringLiteral("English"), "en"},
                                               {QStringLiteral("Deutsch"), "de"}};
  for (const auto& [words, code] : names) {
    auto* action = languages->addAction(words);
    action->setCheckable(true);
    action->setChecked(code == preferredLanguage());
    connect(action, &QAction::triggered, this, [this, picked = code] {
      setPreferredLanguage(picked);
      QMessageBox::information(this, tr("Language"),
                               tr("The language changes when you start the program again."));
    });
  }
}

void MainWindow::makeHelpMenu() {
  auto* menu = menuBar()->addMenu(tr("&Help"));
  menu->addAction(tr("About Creasewright"), this, [this] {
    QMessageBox::about(this, tr("About Creasewright"),
                       tr("Creasewright designs small gift packaging out of card: from the product "
                          "on the table to a true-size template on paper.\n\nFree under the MIT "
                          "licence."));
  });
}

void MainWindow::showTitle() {
  setWindowModified(session_.isDirty());
  setWindowTitle(tr("%1[*] – Creasewright").arg(session_.displayName()));
}

void MainWindow::offerRecovery() {
  const auto found = findRecovery(recoveryFolder());
  if (!found) {
    return;
  }
  QMessageBox box(QMessageBox::Question, tr("Work found"),
                  tr("The program ended last time before your work was saved."),
                  QMessageBox::NoButton, this);
  box.setInformativeText(tr("Take it up again, or throw it away."));
  auto* take = box.addButton(tr("Take it up"), QMessageBox::AcceptRole);
  box.addButton(tr("Throw it away"), QMessageBox::DestructiveRole);
  box.setDefaultButton(take);
  box.exec();
  if (box.clickedButton() == take) {
    session_.recover(found->design, {});
  }
  QFile::remove(found->file);
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (!files_->mayLeave()) {
    event->ignore();
    return;
  }
  autosave_.discard();
  event->accept();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
  QMainWindow::resizeEvent(event);
  columns_->arrangeFor(width());
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const auto urls = event->mimeData()->urls();
  if (urls.size() == 1 && urls.front().isLocalFile()) {
    event->acceptProposedAction();
  }
}

void MainWindow::dropEvent(QDropEvent* event) {
  files_->open(event->mimeData()->urls().front().toLocalFile());
}

}  // namespace creasewright
