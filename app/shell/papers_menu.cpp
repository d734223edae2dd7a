#include "shell/papers_menu.h"

#include <QComboBox>
#include <QKeySequence>
#include <QMessageBox>

#include "bridge/problem_text.h"
#include "classroom/kit_window.h"
#include "preview/fold_panel.h"
#include "preview/fold_view.h"
#include "printing/export_dialog.h"
#include "printing/guide_window.h"
#include "printing/picture_dialog.h"
#include "printing/print_dialog.h"
#include "widgets/length_edit.h"

namespace creasewright {

PapersMenu::PapersMenu(DesignSession& session, FoldPanel& fold, QWidget* window)
    : QMenu(tr("&Papers"), window), session_(session), fold_(fold), window_(window) {
  auto* print = addAction(tr("Print the template…"), this, &PapersMenu::print);
  print->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_P));
  addAction(tr("Printed papers…"), this, &PapersMenu::printPapers);
  auto* guide = addAction(tr("Guide…"), this, &PapersMenu::showGuide);
  guide->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G));
  auto* kit = addAction(tr("Class kit…"), this, &PapersMenu::planKit);
  kit->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_K));
  auto* save = addAction(tr("Save as a file…"), this, &PapersMenu::saveFile);
  save->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_E));
  auto* picture = addAction(tr("Save a picture…"), this, &PapersMenu::savePicture);
  picture->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E));
}

void PapersMenu::print() {
  if (mayMake()) PrintDialog(session_, window_).exec();
}

void PapersMenu::printPapers() {
  if (!mayMake()) return;
  PrintDialog dialog(session_, window_);
  dialog.kind().setCurrentIndex(dialog.kind().findData(static_cast<int>(TemplateKind::Printed)));
  dialog.exec();
}

void PapersMenu::saveFile() {
  if (mayMake()) ExportDialog(session_, window_).exec();
}

void PapersMenu::savePicture() {
  if (mayMake()) PictureDialog(session_, fold_.view().sight(), fold_.piece(), window_).exec();
}

void PapersMenu::showGuide() {
  if (mayMake()) GuideWindow(session_, window_).exec();
}

void PapersMenu::planKit() {
  if (mayMake()) KitWindow(session_, window_).exec();
}

/// Paper must never show other numbers than the fields do.
bool PapersMenu::mayMake() {
  LengthEdit::commitFocused();
  if (session_.isCurrent()) return true;
  QMessageBox::warning(window_, tr("Creasewright"),
                       problemSentence(session_.problems().front(), session_.unit()));
  return false;
}

}  // namespace creasewright
