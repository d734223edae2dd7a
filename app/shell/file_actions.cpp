#include "shell/file_actions.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "bridge/problem_text.h"
#include "commands/edits.h"
#include "session/preferences.h"
#include "shelf/shelf_window.h"
#include "shelf/words_dialog.h"
#include "stock/stock_window.h"
#include "widgets/icon.h"

namespace creasewright {

namespace {

const QString designEnding = QStringLiteral(".cwdesign");

QString documentsFolder() {
  return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

}  // namespace

FileActions::FileActions(DesignSession& session, QWidget* window)
    : QObject(window),
      session_(session),
      window_(window),
      new_(make(QStringLiteral("new"), tr("&New"), QKeySequence(Qt::CTRL | Qt::Key_N))),
      open_(make(QStringLiteral("open-file"), tr("&Open…"), QKeySequence(Qt::CTRL | Qt::Key_O))),
      shelf_(make({}, tr("S&helf…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O))),
      save_(make(QStringLiteral("save"), tr("&Save"), QKeySequence(Qt::CTRL | Qt::Key_S))),
      saveAs_(make({}, tr("Save &as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S))),
      words_(make({}, tr("&Title, tags, notes…"), QKeySequence(Qt::CTRL | Qt::Key_T))),
      stock_(make({}, tr("Stoc&k and supplies…"), {})) {
  connect(new_, &QAction::triggered, this, &FileActions::startNew);
  connect(open_, &QAction::triggered, this, &FileActions::askOpen);
  connect(shelf_, &QAction::triggered, this, &FileActions::showShelf);
  connect(save_, &QAction::triggered, this, &FileActions::save);
  connect(saveAs_, &QAction::triggered, this, &FileActions::saveAs);
  connect(words_, &QAction::triggered, this, &FileActions::editWords);
  connect(stock_, &QAction::triggered, this,
          [this] { StockWindow(session_.unit(), window_).exec(); });
}

QAction* FileActions::make(const QString& icon, const QString& words, const QKeySequence& keys) {
  auto* action = new QAction(words, this);
  if (!icon.isEmpty()) {
    action->setIcon(lineIcon(icon));
  }
  action->setShortcut(keys);
  return action;
}

void FileActions::addTo(QMenu* menu) {
  menu->addAction(new_);
  menu->addAction(open_);
  menu->addAction(shelf_);
  menu->addAction(stock_);
  recent_ = menu->addMenu(tr("Open &recent"));
  connect(recent_, &QMenu::aboutToShow, this, &FileActions::fillRecent);
  connect(menu, &QMenu::aboutToShow, this,
          [this] { recent_->setEnabled(!recentFiles().isEmpty()); });
  menu->addSeparator();
  menu->addAction(save_);
  menu->addAction(saveAs_);
  menu->addAction(words_);
}

bool FileActions::mayLeave() {
  if (!session_.isDirty()) {
    return true;
  }
  QMessageBox box(QMessageBox::Question, tr("Unsaved work"),
                  tr("“%1” has changes that are not saved.").arg(session_.displayName()),
                  QMessageBox::NoButton, window_);
  box.setInformativeText(tr("Save them now, or leave them behind."));
  auto* saveButton = box.addButton(tr("Save"), QMessageBox::AcceptRole);
  auto* discard = box.addButton(tr("Leave them"), QMessageBox::DestructiveRole);
  box.addButton(tr("Stay here"), QMessageBox::RejectRole);
  box.setDefaultButton(saveButton);
  box.exec();
  if (box.clickedButton() == saveButton) {
    return save();
  }
  return box.clickedButton() == discard;
}

void FileActions::open(const QString& path) {
  if (!mayLeave()) {
    return;
  }
  if (const auto problem = session_.open(path)) {
    complain(*problem);
    return;
  }
  rememberFile(path);
}

void FileActions::showShelf() {
  ShelfWindow shelf(session_, ShelfFolder::ofUser(), window_);
  if (shelf.exec() != QDialog::Accepted) {
    return;
  }
  if (!shelf.chosen().isEmpty()) {
    open(shelf.chosen());
  } else if (shelf.copied() && mayLeave()) {
    session_.start(*shelf.copied(), {});
  }
}

void FileActions::editWords() {
  WordsDialog dialog(wordsOf(session_.design()), window_);
  if (dialog.exec() == QDialog::Accepted) {
    changeWords(session_, dialog.words());
  }
}

bool FileActions::save() { return session_.path().isEmpty() ? saveAs() : store(session_.path()); }

bool FileActions::saveAs() {
  QString suggestion = session_.path();
  if (suggestion.isEmpty()) {
    QString name = session_.displayName();
    name.replace(QLatin1Char('/'), QLatin1Char('-'));
    suggestion = QDir(documentsFolder()).filePath(name + designEnding);
  }
  QString path = QFileDialog::getSaveFileName(window_, tr("Save the design"), suggestion,
                                              tr("Designs (*.cwdesign)"));
  if (path.isEmpty()) {
    return false;
  }
  if (QFileInfo(path).suffix().isEmpty()) {
    path += designEnding;
  }
  return store(path);
}

bool FileActions::store(const QString& path) {
  if (const auto problem = session_.saveAs(path)) {
    complain(*problem);
    return false;
  }
  rememberFile(path);
  return true;
}

void FileActions::startNew() {
  if (mayLeave()) {
    session_.start(freshDesign(), {});
  }
}

void FileActions::askOpen() {
  const QString folder =
      session_.path().isEmpty() ? documentsFolder() : QFileInfo(session_.path()).path();
  const QString path = QFileDialog::getOpenFileName(window_, tr("Open a design"), folder,
                                                    tr("Designs (*.cwdesign);;All files (*)"));
  if (!path.isEmpty()) {
    open(path);
  }
}

void FileActions::fillRecent() {
  recent_->clear();
  for (const QString& path : recentFiles()) {
    auto* action = recent_->addAction(QFileInfo(path).completeBaseName());
    action->setToolTip(QDir::toNativeSeparators(path));
    connect(action, &QAction::triggered, this, [this, path] { open(path); });
  }
}

void FileActions::complain(const Problem& problem) {
  QMessageBox::warning(window_, tr("Creasewright"), problemSentence(problem, session_.unit()));
}

}  // namespace creasewright
