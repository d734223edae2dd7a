#include "keeping/design_menu.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "gallery/gallery_view.h"
#include "keeping/keep_dialog.h"
#include "kept_styles/style_store.h"
#include "widgets/length_edit.h"

namespace creasewright {

namespace {

const QString styleEnding = QStringLiteral(".cwstyle");

QString documents() { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

std::vector<OwnStyle> readableStyles() {
  std::vector<OwnStyle> styles;
  for (StyleFile& file : ownStyleFiles())
    if (file.style) styles.push_back(std::move(file.style).value());
  return styles;
}

}  // namespace

DesignMenu::DesignMenu(DesignSession& session, GalleryView& gallery, QWidget* window)
    : QMenu(tr("&Design"), window), session_(session), gallery_(gallery), window_(window) {
  auto* keep = addAction(tr("&Keep as my style…"), this, &DesignMenu::keep);
  keep->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_K));
  auto* free = addAction(tr("&Take the style’s changes into the design"), this,
                         [this] { freeFromStyle(session_); });
  addSeparator();
  addAction(tr("&Open a style file…"), this, &DesignMenu::askForFile);
  connect(this, &QMenu::aboutToShow, this,
          [this, free] { free->setEnabled(session_.design().ownStyle.has_value()); });
  connect(&gallery_, &GalleryView::fileAsked, this, &DesignMenu::askForFile);
  connect(&gallery_, &GalleryView::changeAsked, this, &DesignMenu::change);
  connect(&gallery_, &GalleryView::copyAsked, this, &DesignMenu::saveCopy);
  connect(&gallery_, &GalleryView::removalAsked, this, &DesignMenu::remove);
}

void DesignMenu::keep() {
  LengthEdit::commitFocused();
  const Design& design = session_.design();
  const std::string again = design.ownStyle ? design.ownStyle->id : changing_;
  KeepDialog dialog(design, readableStyles(), again, session_.unit(), window_);
  if (dialog.exec() != QDialog::Accepted || !dialog.style()) return;
  if (const auto problem = storeOwnStyle(*dialog.style())) return complain(*problem);
  changing_ = dialog.style()->id;
  gallery_.refresh();
  emit told(tr("“%1” is kept. It stands among the styles for your product.")
                .arg(text(dialog.style()->title)));
}

void DesignMenu::askForFile() {
  const QString path = QFileDialog::getOpenFileName(window_, tr("Open a style"), documents(),
                                                    tr("Styles (*.cwstyle);;All files (*)"));
  if (!path.isEmpty()) take(path);
}

void DesignMenu::take(const QString& path) {
  const Result<OwnStyle> style = readOwnStyleFile(QFile::encodeName(path).toStdString());
  if (!style) return complain(style.problem());
  const std::optional<OwnStyle> kept = ownStyleCalled(style->id);
  if (kept && *kept != *style && !mayReplace(*kept, *style)) return;
  if (const auto problem = storeOwnStyle(*style)) return complain(*problem);
  emit galleryAsked();
  gallery_.refresh();
  gallery_.showStyle(text(style->id));
  emit told(tr("“%1” is among your styles.").arg(text(style->title)));
}

bool DesignMenu::mayReplace(const OwnStyle& kept, const OwnStyle& taken) {
  QMessageBox box(
      QMessageBox::Question, tr("Style known"),
      tr("“%1” is among your styles already, kept %2 times; the file was kept %3 times.")
          .arg(text(kept.title))
          .arg(kept.change)
          .arg(taken.change),
      QMessageBox::NoButton, window_);
  box.setInformativeText(tr("Designs made from it keep what they have."));
  auto* replace = box.addButton(tr("Replace it"), QMessageBox::AcceptRole);
  box.addButton(tr("Leave it"), QMessageBox::RejectRole);
  box.setDefaultButton(replace);
  box.exec();
  return box.clickedButton() == replace;
}

/// The design in hand becomes one of the style, with what that brought open to be changed.
void DesignMenu::change(const QString& id) {
  const std::optional<OwnStyle> style = ownStyleCalled(id.toStdString());
  if (!style) return;
  changing_ = style->id;
  openStyleIn(session_, *style);
  emit told(tr("Change “%1”, then keep it again in the Design menu.").arg(text(style->title)));
}

void DesignMenu::saveCopy(const QString& id) {
  const std::optional<OwnStyle> style = ownStyleCalled(id.toStdString());
  if (!style) return;
  QString path = QFileDialog::getSaveFileName(window_, tr("Save a copy of the style"),
                                              QDir(documents()).filePath(id + styleEnding),
                                              tr("Styles (*.cwstyle)"));
  if (path.isEmpty()) return;
  if (QFileInfo(path).suffix().isEmpty()) path += styleEnding;
  if (const auto problem = writeOwnStyleFile(*style, QFile::encodeName(path).toStdString()))
    complain(*problem);
}

void DesignMenu::remove(const QString& id) {
  const std::optional<OwnStyle> style = ownStyleCalled(id.toStdString());
  if (!style) return;
  QMessageBox box(QMessageBox::Question, tr("Remove a style"),
                  tr("Remove “%1” from your styles?").arg(text(style->title)),
                  QMessageBox::NoButton, window_);
  box.setInformativeText(tr("Designs made from it keep what they have."));
  auto* away = box.addButton(tr("Remove it"), QMessageBox::DestructiveRole);
  auto* stay = box.addButton(tr("Leave it"), QMessageBox::RejectRole);
  box.setDefaultButton(stay);
  box.exec();
  if (box.clickedButton() != away) return;
  if (const auto problem = removeOwnStyle(style->id)) return complain(*problem);
  gallery_.refresh();
}

void DesignMenu::complain(const Problem& problem) {
  QMessageBox::warning(window_, tr("Creasewright"), problemSentence(problem, session_.unit()));
}

}  // namespace creasewright
