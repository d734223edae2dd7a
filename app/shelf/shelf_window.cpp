#include "shelf/shelf_window.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "document/design_file.h"
#include "document/file_io.h"
#include "kits/bundle.h"
#include "own_stock/stock_store.h"
#include "session/preferences.h"
#include "shelf/words_dialog.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kButtonsWidth = 210;

}  // namespace

ShelfWindow::ShelfWindow(DesignSession& session, const ShelfFolder& folder, QWidget* parent)
    : QDialog(parent),
      session_(session),
      folder_(folder),
      model_(new ShelfModel(folder, this)),
      list_(new QListView(this)),
      status_(new QLabel(this)) {
  setWindowTitle(tr("Shelf"));
  resize(fittingScreen(*this, {900, 620}));
  auto* search = new QLineEdit(this);
  search->setPlaceholderText(tr("Search title, style, product, tags, notes"));
  search->setAccessibleName(tr("Search the shelf"));
  search->setClearButtonEnabled(true);
  auto* order = new QComboBox(this);
  order->setAccessibleName(tr("Order"));
  order->addItem(tr("Newest first"), static_cast<int>(ShelfModel::Order::Newest));
  order->addItem(tr("Last used first"), static_cast<int>(ShelfModel::Order::LastUse));
  order->addItem(tr("By title"), static_cast<int>(ShelfModel::Order::Title));
  order->addItem(tr("By style"), static_cast<int>(ShelfModel::Order::Style));
  list_->setModel(model_);
  list_->setViewMode(QListView::IconMode);
  list_->setResizeMode(QListView::Adjust);
  list_->setUniformItemSizes(true);
  list_->setMovement(QListView::Static);
  list_->setIconSize(ShelfModel::kPictureSize);
  list_->setSpacing(6);
  list_->setAccessibleName(tr("Saved designs"));
  auto* top = new QHBoxLayout;
  top->addWidget(search, 1);
  top->addWidget(order);
  auto* left = new QVBoxLayout;
  left->addLayout(top);
  left->addWidget(list_, 1);
  auto* column = new QVBoxLayout;
  const auto button = [&](const QString& words, auto action) {
    auto* made = new QPushButton(words, this);
    made->setAutoDefault(false);
    made->setMinimumWidth(kButtonsWidth);
    connect(made, &QPushButton::clicked, this, action);
    column->addWidget(made);
    return made;
  };
  button(
      tr("Open"), [this] { openCurrent(); })
      ->setProperty("primary", true);
  button(
      tr("Copy for the present product"), [this] { copyCurrent(); });
  button(
      tr("Put the present design here"), [this] { addPresent(); });
  button(
      tr("Title, tags, notes…"), [this] { editWords(); });
  button(tr("Remove"), [this] { removeCurrent(); });
  column->addSpacing(12);
  button(
      tr("Save all as a bundle…"), [this] { exportAll(); });
  button(tr("Add a bundle…"), [this] { importBundle(); });
  status_->setWordWrap(true);
  status_->setMaximumWidth(kButtonsWidth);
  status_->setProperty("quiet", true);
  column->addWidget(status_);
  column->addStretch(1);
  button(tr("Close"), [this] { reject(); });
  auto* layout = new QHBoxLayout(this);
  layout->addLayout(left, 1);
  layout->addLayout(column);
  connect(
      search, &QLineEdit::textChanged, this,
      [this](const QString& words) {
        model_->setWords(words);
        count();
      });
  connect(
      order, &QComboBox::currentIndexChanged, this,
      [this, order] {
        model_->setOrder(static_cast<ShelfModel::Order>(order->currentData().toInt()));
      });
  connect(list_, &QListView::activated, this, [this] { openCurrent(); });
  connect(model_, &QAbstractItemModel::modelReset, this, &ShelfWindow::count);
  connect(model_, &QAbstractItemModel::dataChanged, this, &ShelfWindow::count);
  search->setFocus();
  count();
}

void ShelfWindow::count() {
  if (model_->total() == 0) {
    status_->setText(tr("The shelf is empty. Put designs here to find them again."));
    return;
  }
  QString words = tr("%n design(s)", nullptr, model_->rowCount() - model_->unreadable());
  if (model_->unreadable() > 0) {
    words +=
        QLatin1Char('\n') + tr("%n file(s) that cannot be read", nullptr, model_->unreadable());
  }
  status_->setText(words);
}

void ShelfWindow::openCurrent() {
  const QModelIndex index = list_->currentIndex();
  if (!index.isValid()) {
    status_->setText(tr("Choose a design first."));
    return;
  }
  chosen_ = model_->entry(index).path;
  rememberUse(chosen_);
  accept();
}

void ShelfWindow::copyCurrent() {
  const QModelIndex index = list_->currentIndex();
  if (!index.isValid() || !model_->entry(index).design) {
    status_->setText(tr("Choose a design first."));
    return;
  }
  const Design& from = *model_->entry(index).design;
  const Design& now = session_.design();
  const Result<Design> made = newDesign(from.styleId, now.product ? now.product : from.product,
                                        from.card, from.ease, from.grid);
  if (!made) {
    tell(made.problem());
    return;
  }
  rememberUse(model_->entry(index).path);
  copied_ = *made;
  copied_->notes = from.notes;
  copied_->tags = from.tags;
  copied_->extras = from.extras;
  copied_->board = from.board;
  accept();
}

void ShelfWindow::addPresent() {
  tell(folder_.add(session_.design()));
  model_->reload();
  count();
}

void ShelfWindow::editWords() {
  const QModelIndex index = list_->currentIndex();
  if (!index.isValid() || !model_->entry(index).design) {
    status_->setText(tr("Choose a design first."));
    return;
  }
  const ShelfEntry& entry = model_->entry(index);
  WordsDialog dialog(wordsOf(*entry.design), this);
  if (dialog.exec() != QDialog::Accepted) return;
  const Design design = withWords(*entry.design, dialog.words());
  tell(writeDesignFile(design, QFile::encodeName(entry.path).toStdString()));
  model_->reload();
  count();
}

void ShelfWindow::removeCurrent() {
  const QModelIndex index = list_->currentIndex();
  if (!index.isValid()) {
    status_->setText(tr("Choose a design first."));
    return;
  }
  const QString path = model_->entry(index).path;
  const auto answer = QMessageBox::question(
      this, tr("Remove"), tr("Move “%1” to the trash?").arg(model_->title(index)));
  if (answer == QMessageBox::Yes) {
    ShelfFolder::remove(path);
    model_->reload();
    count();
  }
}

void ShelfWindow::exportAll() {
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  QString path = QFileDialog::getSaveFileName(
      this, QString(), QDir(folder).filePath(tr("Shelf") + ".cwbundle"), tr("Bundle (*.cwbundle)"));
  if (path.isEmpty()) return;
  if (!path.endsWith(QLatin1String(".cwbundle"), Qt::CaseInsensitive))
    path += QLatin1String(".cwbundle");
  if (model_->isReading()) {
    status_->setText(tr("Some designs are still being read. Save the bundle when all are here."));
    return;
  }
  const Result<std::string> bytes =
      bundleFileText({model_->designs(), ownStock(), ownSupplies()}, path.toStdString());
  tell(bytes ? writeFileAtomically(QFile::encodeName(path).toStdString(), *bytes)
             : std::optional(bytes.problem()));
}

void ShelfWindow::importBundle() {
  const QString path =
      QFileDialog::getOpenFileName(this, QString(), QString(), tr("Bundle (*.cwbundle)"));
  if (path.isEmpty()) return;
  tell(folder_.addBundle(path));
  model_->reload();
  count();
}

void ShelfWindow::tell(const std::optional<Problem>& problem) {
  if (problem)
    QMessageBox::warning(this, tr("Creasewright"), problemSentence(*problem, session_.unit()));
}

}  // namespace creasewright
