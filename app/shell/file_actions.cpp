#include "shell/file_actions.h"

#include <QAction>
#include <QApplication>
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
#include "shelf/samples_window.h"
#include "shelf/shelf_window.h"
#include "shelf/words_dialog.h"
#include "stockroom/stock_window.h"
#include "widgets/icon.h"
#include "widgets/length_edit.h"

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
      watch_(session),
      window_(window),
      new_(make(QStringLiteral("new"), tr("&New"), QKeySequence(Qt::CTRL | Qt::Key_N))),
      open_(make(QStringLiteral("open-file"), tr("&Open…"), QKeySequence(Qt::CTRL | Qt::Key_O))),
      shelf_(make({}, tr("S&helf…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_O))),
      samples_(make({}, tr("Sample &gifts…"), {})),
      save_(make(QStringLiteral("save"), tr("&Save"), QKeySequence(Qt::CTRL | Qt::Key_S))),
      saveAs_(make({}, tr("Save &as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S))),
      words_(make({}, tr("&Title, tags, notes…"), QKeySequence(Qt::CTRL | Qt::Key_T))),
      stock_(make({}, tr("Stoc&k and supplies…"), {})) {
  connect(&watch_, &FileWatch::changedOutside, this, &FileActions::askAboutFile);
  connect(new_, &QAction::triggered, this, &FileActions::startNew);
  connect(open_, &QAction::triggered, this, &FileActions::askOpen);
  connect(shelf_, &QAction::triggered, this, &FileActions::showShelf);
  connect(samples_, &QAction::triggered, this, &FileActions::showSamples);
  connect(save_, &QAction::triggered, this, &FileActions::save);
  connect(saveAs_, &QAction::triggered, this, &FileActions::saveAs);
  connect(words_, &QAction::triggered, this, &FileActions::editWords);
  connect(stock_, &QAction::triggered, this,
          [this] { StockWindow(session_.unit(), window_).exec(); });
}

QAction* FileActions::make(const QString& icon, const QString& words, const QKeySequence& keys) {
  auto* action = new QAction(words, this);
  if (!icon.isEmpty()) action->setIcon(lineIcon(icon));
  action->setShortcut(keys);
  return action;
}

void FileActions::addTo(QMenu* menu) {
  menu->addAction(new_);
  menu->addAction(open_);
  menu->addAction(samples_);
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
  LengthEdit::commitFocused();
  if (!session_.isDirty()) return true;
  QMessageBox box(QMessageBox::Question, tr("Unsaved work"),
                  tr("“%1” has changes that are not saved.").arg(session_.displayName()),
                  QMessageBox::NoButton, window_);
  box.setInformativeText(tr("Save them now, or leave them behind."));
  auto* saveButton = box.addButton(tr("Save"), QMessageBox::AcceptRole);
  auto* discard = box.addButton(tr("Leave them"), QMessageBox::DestructiveRole);
  box.addButton(tr("Stay here"), QMessageBox::RejectRole);
  box.setDefaultButton(saveButton);
  box.exec();
  if (box.clickedButton() == saveButton) return save();
  return box.clickedButton() == discard;
}

void FileActions::open(const QString& path) {
  if (path.endsWith(QLatin1String(".cwstyle"))) {
    emit styleAsked(path);
    return;
  }
  if (!mayLeave()) return;
  if (const auto problem = session_.open(path)) {
    complain(*problem);
    return;
  }
  rememberFile(path);
}

void FileActions::showShelf() {
  ShelfWindow shelf(session_, ShelfFolder::ofUser(), window_);
  if (shelf.exec() != QDialog::Accepted) return;
  if (!shelf.chosen().isEmpty())
    open(shelf.chosen());
  else if (shelf.copied() && mayLeave())
    session_.start(*shelf.copied(), {});
}

void FileActions::showSamples() {
  SamplesWindow samples(session_.unit(), window_);
  if (samples.exec() == QDialog::Accepted && samples.chosen() && mayLeave())
    session_.start(*samples.chosen(), {});
}

void FileActions::editWords() {
  WordsDialog dialog(wordsOf(session_.design()), window_);
  if (dialog.exec() == QDialog::Accepted) changeWords(session_, dialog.words());
}

bool FileActions::save() {
  LengthEdit::commitFocused();
  if (session_.path().isEmpty()) return saveAs();
  return mayReplace() && store(session_.path());
}

bool FileActions::saveAs() {
  LengthEdit::commitFocused();
  QString suggestion = session_.path();
  if (suggestion.isEmpty()) {
    QString name = session_.displayName();
    name.replace(QLatin1Char('/'), QLatin1Char('-'));
    suggestion = QDir(documentsFolder()).filePath(name + designEnding);
  }
  QString path = QFileDialog::getSaveFileName(window_, tr("Save the design"), suggestion,
                                              tr("Designs (*.cwdesign)"));
  if (path.isEmpty()) return false;
  if (QFileInfo(path).suffix().isEmpty()) path += designEnding;
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
  if (mayLeave()) session_.start(freshDesign(), {});
}

void FileActions::askOpen() {
  const QString folder =
      session_.path().isEmpty() ? documentsFolder() : QFileInfo(session_.path()).path();
  QStringList paths =
      QFileDialog::getOpenFileNames(window_, tr("Open a design"), folder,
                                    tr("Designs and styles (*.cwdesign *.cwstyle);;All files (*)"));
  if (paths.isEmpty()) return;
  open(paths.takeFirst());
  for (const QString& path : paths) emit windowAsked(path);
}

void FileActions::fillRecent() {
  recent_->clear();
  for (const QString& path : recentFiles()) {
    auto* action = recent_->addAction(QFileInfo(path).completeBaseName());
    action->setToolTip(QDir::toNativeSeparators(path));
    connect(action, &QAction::triggered, this, [this, path] { open(path); });
  }
}

QString FileActions::fileName() const { return QFileInfo(session_.path()).fileName(); }

/// Not into another question, nor while a dialog works with the design.
void FileActions::askAboutFile() {
  if (QApplication::activeModalWidget() != nullptr) {
    watch_.later();
    return;
  }
  const FileState state = watch_.state();
  watch_.accept();
  if (state == FileState::Changed)
    askAboutChange();
  else if (state == FileState::Gone)
    askAboutLoss();
}

void FileActions::askAboutChange() {
  QMessageBox box(QMessageBox::Question, tr("File changed"),
                  tr("“%1” was changed by another program.").arg(fileName()), QMessageBox::NoButton,
                  window_);
  box.setInformativeText(session_.isDirty()
                             ? tr("Loading it takes away the changes you have made here.")
                             : tr("Load it, or go on with the design as it is here."));
  auto* load = box.addButton(tr("Load the file"), QMessageBox::AcceptRole);
  auto* stay = box.addButton(tr("Keep this design"), QMessageBox::RejectRole);
  box.setDefaultButton(session_.isDirty() ? stay : load);
  box.exec();
  if (box.clickedButton() != load) {
    session_.markUnsaved();
    return;
  }
  if (const auto problem = session_.open(session_.path())) {
    session_.markUnsaved();
    complain(*problem);
  }
}

void FileActions::askAboutLoss() {
  session_.markUnsaved();
  QMessageBox box(QMessageBox::Question, tr("File gone"),
                  tr("“%1” was removed or renamed by another program.").arg(fileName()),
                  QMessageBox::NoButton, window_);
  box.setInformativeText(tr("The design is still here. Save it again to keep it."));
  auto* again = box.addButton(tr("Save again"), QMessageBox::AcceptRole);
  box.addButton(tr("Not now"), QMessageBox::RejectRole);
  box.setDefaultButton(again);
  box.exec();
  if (box.clickedButton() == again) store(session_.path());
}

/// Whether saving may replace what stands in the file.
bool FileActions::mayReplace() {
  if (watch_.state() != FileState::Changed) return true;
  QMessageBox box(QMessageBox::Warning, tr("File changed"),
                  tr("“%1” was changed by another program.").arg(fileName()), QMessageBox::NoButton,
                  window_);
  box.setInformativeText(tr("Saving replaces what that program has written."));
  auto* replace = box.addButton(tr("Replace it"), QMessageBox::DestructiveRole);
  auto* stop = box.addButton(tr("Do not save"), QMessageBox::RejectRole);
  box.setDefaultButton(stop);
  box.exec();
  return box.clickedButton() == replace;
}

void FileActions::complain(const Problem& problem) {
  QMessageBox::warning(window_, tr("Creasewright"), problemSentence(problem, session_.unit()));
}

}  // namespace creasewright
