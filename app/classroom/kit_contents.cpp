#include "classroom/kit_contents.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QSpinBox>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/kit_edits.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

constexpr int lowestList = 44;
constexpr int highestList = 104;
constexpr int kCountWidth = 104;

}  // namespace

KitContents::KitContents(KitSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(new QListWidget(this)),
      count_(new QSpinBox(this)),
      piece_(new QComboBox(this)) {
  list_->setMinimumHeight(lowestList);
  list_->setMaximumHeight(highestList);
  list_->setAccessibleName(tr("Everybody makes"));
  count_->setRange(1, kMostPerPerson);
  count_->setFixedWidth(kCountWidth);
  count_->setAccessibleName(tr("How many each person gets"));
  count_->setToolTip(tr("How many each person gets"));
  piece_->setAccessibleName(tr("What is cut of it"));
  piece_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  piece_->setMinimumContentsLength(16);  // “the whole design”
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
  connect(&session_, &KitSession::changed, this, &KitContents::showKit);
  showKit();
}

void KitContents::addItem(KitItem item) {
  addKitItem(session_, std::move(item));
  list_->setCurrentRow(static_cast<int>(session_.kit().items.size()) - 1);
}

void KitContents::addBlank(PlainBlank blank) {
  addKitBlank(session_, std::move(blank));
  list_->setCurrentRow(rows() - 1);
}

bool KitContents::removeCurrent() {
  const int row = list_->currentRow();
  if (row < 0 || rows() < 2) return false;
  removeKitRow(session_, row);
  list_->setCurrentRow(std::max(0, row - 1));
  return true;
}

int KitContents::rows() const {
  return static_cast<int>(session_.kit().items.size() + session_.kit().blanks.size());
}

QString KitContents::rowTitle(int row) const {
  const ClassKit& kit = session_.kit();
  const auto at = static_cast<std::size_t>(row);
  const bool design = at < kit.items.size();
  const int count =
      design ? kit.items[at].perPerson : kit.blanks.at(at - kit.items.size()).perPerson;
  QString title =
      design ? itemTitle(kit.items[at]) : text(kit.blanks.at(at - kit.items.size()).name);
  if (design && !kit.items[at].piece.empty())
    title = tr("%1: only %2").arg(title, pieceTitle(kit.items[at].piece));
  return count == 1 ? title : QStringLiteral("%1 × %2").arg(count).arg(title);
}

/// The row that was chosen stays so, while there are so many.
void KitContents::showKit() {
  {
    const QSignalBlocker quiet(list_);
    const int current = std::clamp(list_->currentRow(), 0, std::max(0, rows() - 1));
    list_->clear();
    for (int row = 0; row < rows(); ++row) list_->addItem(rowTitle(row));
    list_->setCurrentRow(current);
  }
  showCurrent();
}

const KitItem* KitContents::currentItem() const {
  const std::vector<KitItem>& items = session_.kit().items;
  const int row = list_->currentRow();
  return row >= 0 && row < static_cast<int>(items.size()) ? &items[static_cast<std::size_t>(row)]
                                                          : nullptr;
}

const PlainBlank* KitContents::currentBlank() const {
  const std::vector<PlainBlank>& blanks = session_.kit().blanks;
  const int row = list_->currentRow() - static_cast<int>(session_.kit().items.size());
  return row >= 0 && row < static_cast<int>(blanks.size()) ? &blanks[static_cast<std::size_t>(row)]
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
  showPieces(*item);
}

void KitContents::showPieces(const KitItem& item) {
  piece_->addItem(tr("the whole design"), QString());
  if (const BuiltDesign* built = session_.builtOf(item.design))
    for (const BuiltPiece& piece : built->pieces)
      piece_->addItem(tr("only %1").arg(pieceTitle(piece.name)), text(piece.name));
  if (piece_->findData(text(item.piece)) < 0)
    piece_->addItem(tr("only %1").arg(pieceTitle(item.piece)), text(item.piece));
  piece_->setCurrentIndex(piece_->findData(text(item.piece)));
}

void KitContents::setCount(int count) {
  if (currentItem() != nullptr || currentBlank() != nullptr)
    changePerPerson(session_, list_->currentRow(), count);
}

void KitContents::setPiece(int index) {
  if (currentItem() != nullptr)
    changePiece(session_, list_->currentRow(), piece_->itemData(index).toString().toStdString());
}

}  // namespace creasewright
