#include "gallery/gallery_view.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QVBoxLayout>
#include <array>

#include "bridge/text.h"
#include "commands/edits.h"
#include "gallery/gallery_card.h"
#include "gallery/gallery_filter.h"
#include "gallery/gallery_model.h"
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
  auto* back = new QPushButton(tr("Back to the design"), head);
  row->addWidget(title);
  row->addWidget(count_);
  row->addStretch(1);
  row->addWidget(words_);
  row->addWidget(back);
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
  model_->show(suggest(now.product, now.card, now.ease, now.grid, stock), now.styleId,
               session_.unit(), devicePixelRatioF());
  applyFilters();
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
  const std::string_view id = model_->at(filter_->mapToSource(index).row()).style->id;
  emit done();
  if (id != session_.design().styleId) changeStyle(session_, id);
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
