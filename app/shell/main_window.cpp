#include "shell/main_window.h"

#include <QActionGroup>
#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QLocale>
#include <QMenuBar>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <QStatusBar>
#include <QUrl>
#include <algorithm>
#include <iterator>

#include "bridge/language.h"
#include "bridge/text.h"
#include "gallery/gallery_view.h"
#include "keeping/design_menu.h"
#include "own_stock/own_paper_warnings.h"
#include "scene/sheet_view.h"
#include "session/preferences.h"
#include "shell/columns.h"
#include "shell/file_actions.h"
#include "shell/papers_menu.h"
#include "shell/status_line.h"
#include "shell/tool_bar.h"
#include "widgets/history_actions.h"
#include "widgets/undo_keys.h"
#include "widgets/wheel_guard.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

QStringList localFiles(const QMimeData& dropped) {
  QStringList files;
  for (const QUrl& url : dropped.urls())
    if (url.isLocalFile()) files += url.toLocalFile();
  return files;
}

}  // namespace

MainWindow::MainWindow(QWidget* parent)
    : QMainWindow(parent),
      autosave_(session_, recoveryFolder()),
      columns_(new Columns(session_, this)),
      files_(new FileActions(session_, this)),
      status_(new StatusLine(statusBar())) {
  session_.setWarner(ownPaperWarnings);
  setAcceptDrops(true);
  new WheelGuard(this);
  new UndoKeys(this);
  setMinimumSize(960, 560);
  setCentralWidget(columns_);
  makeMenus();
  statusBar()->setSizeGripEnabled(false);
  connect(columns_, &Columns::hovered, status_, &StatusLine::hover);
  connect(&columns_->gallery(), &GalleryView::told, status_, &StatusLine::tell);
  connect(files_, &FileActions::windowAsked, this, [](const QString& path) { openWindow(path); });
  connect(&session_, &DesignSession::changed, this, &MainWindow::showTitle);
  connect(&session_, &DesignSession::fileChanged, this, &MainWindow::showTitle);
  showTitle();
  resize(fittingScreen(*this, {1440, 900}));
}

MainWindow::~MainWindow() {
  // A field that loses the focus still speaks to the session, so the fields go first.
  hide();
  qDeleteAll(findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
}

void MainWindow::begin(const QString& file) {
  if (!file.isEmpty()) files_->open(file);
}

void MainWindow::makeMenus() {
  auto* fileMenu = menuBar()->addMenu(tr("&File"));
  files_->addTo(fileMenu);
  fileMenu->addSeparator();
  auto* quit = fileMenu->addAction(tr("&Quit"), this, &QWidget::close);
  quit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Q));
  makeEditMenu();
  makeViewMenu();
  auto* design = new DesignMenu(session_, columns_->gallery(), this);
  menuBar()->addMenu(design);
  connect(design, &DesignMenu::galleryAsked, this, [this] { columns_->showGallery(true); });
  connect(design, &DesignMenu::told, status_, &StatusLine::tell);
  connect(files_, &FileActions::styleAsked, design, &DesignMenu::take);
  auto* papers = new PapersMenu(session_, columns_->fold(), this);
  menuBar()->addMenu(papers);
  makeHelpMenu();
  addToolBar(new ToolBar(session_, *files_, *columns_, papers, this));
}

void MainWindow::makeEditMenu() {
  auto* menu = menuBar()->addMenu(tr("&Edit"));
  auto* undo = undoAction(session_.history(), this);
  undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
  auto* redo = redoAction(session_.history(), this);
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
  std::vector<Language> choice{{{}, tr("As the system")}};
  std::ranges::copy(creasewright::languages(), std::back_inserter(choice));
  for (const auto& [code, words] : choice) {
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

void MainWindow::offer(const std::vector<Recovered>& works) {
  for (const Recovered& work : works) {
    if (!wants(work)) continue;
    const bool free = session_.path().isEmpty() && !session_.isDirty();
    (free ? this : openWindow())->takeUp(work);
  }
}

void MainWindow::welcome() {
  if (!isFirstStart()) return;
  rememberStart();
  if (session_.path().isEmpty() && !session_.isDirty()) files_->showSamples();
}

/// Whoever closes the question without an answer is asked again at the next start.
bool MainWindow::wants(const Recovered& work) {
  const QString name =
      work.design.title.empty() ? QFileInfo(work.path).completeBaseName() : text(work.design.title);
  QMessageBox box(
      QMessageBox::Question, tr("Unsaved work"),
      tr("“%1” was not saved when the program ended.").arg(name.isEmpty() ? tr("Untitled") : name),
      QMessageBox::NoButton, this);
  box.setInformativeText(
      tr("It was kept on %1.").arg(QLocale().toString(work.kept, QLocale::ShortFormat)));
  auto* take = box.addButton(tr("Restore"), QMessageBox::AcceptRole);
  auto* drop = box.addButton(tr("Discard"), QMessageBox::DestructiveRole);
  box.addButton(tr("Not now"), QMessageBox::RejectRole);
  box.setDefaultButton(take);
  box.exec();
  if (box.clickedButton() == drop) work.discard();
  return box.clickedButton() == take;
}

/// The old copy goes when this window has made its own.
void MainWindow::takeUp(const Recovered& work) {
  session_.recover(work.design, work.path);
  if (autosave_.keep()) work.discard();
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
  if (!localFiles(*event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  QStringList dropped = localFiles(*event->mimeData());
  files_->open(dropped.takeFirst());
  for (const QString& file : dropped) openWindow(file);
}

MainWindow* openWindow(const QString& file) {
  auto* window = new MainWindow;
  window->setAttribute(Qt::WA_DeleteOnClose);
  window->show();
  window->begin(file);
  return window;
}

}  // namespace creasewright
