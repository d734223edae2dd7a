#include "kits/kit_contents.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QSpinBox>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/build.h"
#include "kits/kit_words.h"

namespace creasewright {

namespace {

constexpr int lowestList = 44;
constexpr int highestList = 104;
constexpr int countWidth = 70;

}  // namespace

KitContents::KitContents(QWidget* parent)
    : QWidget(parent),
      list_(new QListWidget(this)),
      count_(new QSpinBox(this)),
      piece_(new QComboBox(this)) {
  list_->setMinimumHeight(lowestList);
  list_->setMaximumHeight(highestList);
  list_->setAccessibleName(tr("Everybody makes"));
  count_->setRange(1, kMostPerPerson);
  count_->setFixedWidth(countWidth);
  count_->setAccessibleName(tr("How many each person gets"));
  count_->setToolTip(tr("How many each person gets"));
  piece_->setAccessibleName(tr("What is cut of it"));
  piece_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  piece_->setMinimumContentsLength(8);
  auto* line = new QHBoxLayout;
  line->addWidget(count_);
  line->addWidget(new QLabel(QStringLiteral("×"), this));
  line->addWidget(piece_, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  auto* title = new QLabel(tr("Everybody makes"), this);
  title->setBuddy(list_);
  layout->addWidget(title);
  layout->addWidget(list_);
  layout->addLayout(line);
  connect(list_, &QListWidget::currentRowChanged, this, &KitContents::showCurrent);
  connect(count_, &QSpinBox::valueChanged, this, &KitContents::setCount);
  connect(piece_, &QComboBox::activated, this, &KitContents::setPiece);
}

void KitContents::setContents(std::vector<KitItem> items, std::vector<PlainBlank> blanks) {
  items_ = std::move(items);
  blanks_ = std::move(blanks);
  fill(0);
}

void KitContents::addItem(KitItem item) {
  items_.push_back(std::move(item));
  fill(static_cast<int>(items_.size()) - 1);
  emit changed();
}

void KitContents::addBlank(PlainBlank blank) {
  blanks_.push_back(std::move(blank));
  fill(static_cast<int>(items_.size() + blanks_.size()) - 1);
  emit changed();
}

bool KitContents::removeCurrent() {
  const int row = list_->currentRow();
  const int items = static_cast<int>(items_.size());
  if (row < 0 || list_->count() < 2) {
    return false;
  }
  if (row < items) {
    items_.erase(items_.begin() + row);
  } else {
    blanks_.erase(blanks_.begin() + (row - items));
  }
  fill(std::max(0, row - 1));
  emit changed();
  return true;
}

QString KitContents::rowTitle(int row) const {
  const auto at = static_cast<std::size_t>(row);
  const bool design = at < items_.size();
  const int count = design ? items_[at].perPerson : blanks_.at(at - items_.size()).perPerson;
  QString title = design ? itemTitle(items_[at]) : text(blanks_.at(at - items_.size()).name);
  if (design && !items_[at].piece.empty()) {
    title = tr("%1: only %2").arg(title, pieceTitle(items_[at].piece));
  }
  return count == 1 ? title : QStringLiteral("%1 × %2").arg(count).arg(title);
}

void KitContents::fill(int current) {
  {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (int row = 0; row < static_cast<int>(items_.size() + blanks_.size()); ++row) {
      list_->addItem(rowTitle(row));
    }
    list_->setCurrentRow(current);
  }
  showCurrent();
}

KitItem* KitContents::currentItem() {
  const int row = list_->currentRow();
  return row >= 0 && row < static_cast<int>(items_.size()) ? &items_[static_cast<std::size_t>(row)]
                                                           : nullptr;
}

PlainBlank* KitContents::currentBlank() {
  const int row = list_->currentRow() - static_cast<int>(items_.size());
  return row >= 0 && row < static_cast<int>(blanks_.size())
             ? &blanks_[static_cast<std::size_t>(row)]
             : nullptr;
}

void KitContents::showCurrent() {
  const QSignalBlocker quietCount(count_);
  const KitItem* item = currentItem();
  const PlainBlank* blank = currentBlank();
  count_->setEnabled(item != nullptr || blank != nullptr);
  count_->setValue(item != nullptr ? item->perPerson : blank != nullptr ? blank->perPerson : 1);
  piece_->clear();
  piece_->setEnabled(item != nullptr);
  if (item == nullptr) {
    piece_->addItem(tr("plain blank"));
    return;
  }
  piece_->addItem(tr("the whole design"), QString());
  if (const Result<BuiltDesign> built = build(item->design)) {
    for (const BuiltPiece& piece : built->pieces) {
      piece_->addItem(tr("only %1").arg(pieceTitle(piece.piece.name)), text(piece.piece.name));
    }
  }
  piece_->setCurrentIndex(std::max(0, piece_->findData(text(item->piece))));
}

void KitContents::setCount(int count) {
  if (KitItem* item = currentItem()) {
    item->perPerson = count;
  } else if (PlainBlank* blank = currentBlank()) {
    blank->perPerson = count;
  }
  if (QListWidgetItem* row = list_->currentItem()) {
    row->setText(rowTitle(list_->currentRow()));
    emit changed();
  }
}

void KitContents::setPiece(int index) {
  if (KitItem* item = currentItem()) {
    item->piece = piece_->itemData(index).toString().toStdString();
    list_->currentItem()->setText(rowTitle(list_->currentRow()));
    emit changed();
  }
}

}  // namespace creasewright
