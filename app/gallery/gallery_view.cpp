#include "gallery/gallery_view.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "bridge/design_words.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "gallery/gallery_card.h"
#include "gallery/gallery_filter.h"
#include "gallery/gallery_model.h"
#include "kept_styles/style_store.h"
#include "session/preferences.h"

namespace creasewright {

GalleryView::GalleryView(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      model_(new GalleryModel(this)),
      filter_(new GalleryFilter(this)),
      list_(new QListView(this)) {
  filter_->setSourceModel(model_);
  list_->setModel(filter_);
  list_->setItemDelegate(new GalleryCard(list_));
  list_->setViewMode(QListView::IconMode);
  list_->setResizeMode(QListView::Adjust);
  list_->setMovement(QListView::Static);
  list_->setUniformItemSizes(true);
  list_->setMouseTracking(true);
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list_->setAccessibleName(tr("Styles"));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  layout->setSpacing(8);
  layout->addWidget(makeHead());
  layout->addWidget(makeFilters());
  layout->addWidget(list_, 1);
  unreadable_ = new QLabel(this);
  unreadable_->setProperty("problem", true);
  unreadable_->setWordWrap(true);
  layout->addWidget(unreadable_);
  list_->setContextMenuPolicy(Qt::CustomContextMenu);
  connect(list_, &QListView::customContextMenuRequested, this, &GalleryView::showMenu);
  connect(list_, &QListView::clicked, this, &GalleryView::choose);
  connect(
      &session_, &DesignSession::changed, this,
      [this] {
        if (isVisible()) refresh();
      });
  connect(&session_, &DesignSession::unitChanged, this, [this] { refresh(); });
}

QWidget* GalleryView::makeHead() {
  auto* head = new QWidget(this);
  auto* row = new QHBoxLayout(head);
  row->setContentsMargins(0, 0, 0, 0);
  auto* title = new QLabel(tr("Styles for your product"), head);
  title->setProperty("title", true);
  count_ = new QLabel(head);
  count_->setProperty("quiet", true);
  words_ = new QLineEdit(head);
  words_->setPlaceholderText(tr("Search"));
  words_->setAccessibleName(tr("Search"));
  words_->setClearButtonEnabled(true);
  words_->setMaximumWidth(200);
  auto* file = new QPushButton(tr("Open…"), head);
  file->setToolTip(tr("A style that somebody gave you, as a .cwstyle file"));
  auto* back = new QPushButton(tr("Back to the design"), head);
  row->addWidget(title);
  row->addWidget(count_);
  row->addStretch(1);
  row->addWidget(words_);
  row->addWidget(file);
  row->addWidget(back);
  connect(file, &QPushButton::clicked, this, &GalleryView::fileAsked);
  connect(words_, &QLineEdit::textChanged, filter_, &GalleryFilter::setWords);
  connect(words_, &QLineEdit::textChanged, this, &GalleryView::applyFilters);
  connect(back, &QPushButton::clicked, this, &GalleryView::done);
  return head;
}

QWidget* GalleryView::makeFilters() {
  auto* filters = new QWidget(this);
  auto* row = new QHBoxLayout(filters);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(12);
  sheet_ = new QComboBox(filters);
  sheet_->setAccessibleName(tr("Sheet"));
  for (const Paper& paper : papers()) sheet_->addItem(text(paper.name), text(paper.id));
  sheet_->setCurrentIndex(sheet_->findData(preferredPaper()));
  const std::array boxes{&onMySheet_, &noGlue_, &showsProduct_, &forRound_};
  const std::array titles{tr("Fits on"), tr("No glue"), tr("Shows the product"),
                          tr("For round things")};
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    *boxes.at(i) = new QCheckBox(titles.at(i), filters);
    row->addWidget(*boxes.at(i));
    if (i == 0) row->addWidget(sheet_);
    connect(*boxes.at(i), &QCheckBox::toggled, this, &GalleryView::applyFilters);
  }
  row->addStretch(1);
  connect(sheet_, &QComboBox::currentIndexChanged, this, &GalleryView::refresh);
  return filters;
}

void GalleryView::refresh() {
  const Design& now = session_.design();
  const auto sheet = findPaper(sheet_->currentData().toString().toStdString());
  const std::array stock{sheet ? *sheet : papers().front()};
  std::vector<OwnStyle> own;
  QStringList unreadable;
  for (StyleFile& file : ownStyleFiles())
    if (file.style)
      own.push_back(std::move(file.style).value());
    else
      unreadable += problemSentence(file.style.problem(), session_.unit());
  unreadable_->setText(unreadable.join(QLatin1Char('\n')));
  unreadable_->setVisible(!unreadable.isEmpty());
  model_->show(suggest(now.product, now.card, now.ease, now.grid, stock, own), styleIdOf(now),
               session_.unit(), devicePixelRatioF());
  applyFilters();
}

void GalleryView::showStyle(const QString& id) {
  words_->clear();
  for (int row = 0; row < filter_->rowCount(); ++row) {
    const QModelIndex index = filter_->index(row, 0);
    const Suggestion& suggestion = model_->at(filter_->mapToSource(index).row());
    if (text(styleIdOf(suggestion.built.design)) != id) continue;
    list_->setCurrentIndex(index);
    list_->scrollTo(index);
  }
}

/// What can be done with a style of the person's own.
void GalleryView::showMenu(QPoint at) {
  QModelIndex index = list_->indexAt(at);
  if (!index.isValid()) index = list_->currentIndex();
  if (!index.isValid() || !index.data(GalleryModel::OwnRole).toBool()) return;
  const Design& design = model_->at(filter_->mapToSource(index).row()).built.design;
  const QString id = text(styleIdOf(design));
  QMenu menu(this);
  menu.addAction(
      tr("Change this style"), this,
      [this, id] {
        emit done();
        emit changeAsked(id);
      });
  menu.addAction(tr("Save a copy as a file…"), this, [this, id] { emit copyAsked(id); });
  menu.addSeparator();
  menu.addAction(tr("Remove…"), this, [this, id] { emit removalAsked(id); });
  menu.exec(list_->viewport()->mapToGlobal(at));
}

void GalleryView::applyFilters() {
  filter_->setWish({.onMySheet = onMySheet_->isChecked(),
                    .noGlue = noGlue_->isChecked(),
                    .showsProduct = showsProduct_->isChecked(),
                    .forRound = forRound_->isChecked()});
  count_->setText(tr("%1 of %2").arg(filter_->rowCount()).arg(model_->rowCount()));
}

void GalleryView::choose(const QModelIndex& index) {
  if (!index.isValid()) return;
  const Design chosen = model_->at(filter_->mapToSource(index).row()).built.design;
  emit done();
  const Design before = session_.design();
  chosen.ownStyle ? changeStyle(session_, *chosen.ownStyle) : changeStyle(session_, chosen.styleId);
  if (session_.design() != before) tellOfPhotos();
}

/// They are kept, for the person may come back to the style before.
void GalleryView::tellOfPhotos() {
  const auto photos = static_cast<int>(session_.design().photos.size());
  if (photos > 0)
    emit told(
        tr("The design keeps its %n photo(s), which may show the box before: look through "
           "them with “Photos…” in the guide.",
           "", photos));
}

void GalleryView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
  list_->setFocus();
}

void GalleryView::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape)
    emit done();
  else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
    choose(list_->currentIndex());
  else
    QWidget::keyPressEvent(event);
}

}  // namespace creasewright
