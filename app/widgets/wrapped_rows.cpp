#include "widgets/wrapped_rows.h"

#include <QApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QTreeView>

namespace creasewright {

namespace {

constexpr int kBox = 16;  // pixels
constexpr int kPad = 4;

bool hasBox(const QModelIndex& index) { return index.data(Qt::CheckStateRole).isValid(); }

QRect boxIn(const QRect& row) { return {row.left() + kPad, row.top() + kPad, kBox, kBox}; }

int indentOf(const QModelIndex& index) { return hasBox(index) ? 2 * kPad + kBox : kPad; }

bool isToggle(const QEvent& event, const QRect& box) {
  if (event.type() == QEvent::MouseButtonRelease) {
    const auto& mouse = static_cast<const QMouseEvent&>(event);
    return mouse.button() == Qt::LeftButton && box.contains(mouse.position().toPoint());
  }
  return event.type() == QEvent::KeyPress &&
         static_cast<const QKeyEvent&>(event).key() == Qt::Key_Space;
}

}  // namespace

WrappedRows::WrappedRows(QTreeView* tree) : QStyledItemDelegate(tree), tree_(tree) {
  tree->setItemDelegate(this);
  tree->header()->setSectionResizeMode(QHeaderView::Stretch);
  tree->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  // The heights of rows follow the width.
  connect(tree->header(), &QHeaderView::sectionResized, this, [this, tree] {
    emit sizeHintChanged(tree->indexAt({0, 0}));
  });
}

void WrappedRows::initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const {
  QStyledItemDelegate::initStyleOption(option, index);
  // The box is drawn here: a style sheet and the style under it draw two.
  option->features &= ~QStyleOptionViewItem::HasCheckIndicator;
  option->text.clear();
}

QSize WrappedRows::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
  int depth = tree_->rootIsDecorated() ? 1 : 0;
  for (QModelIndex up = index.parent(); up.isValid(); up = up.parent()) ++depth;
  const int width = tree_->viewport()->width() - depth * tree_->indentation() - indentOf(index);
  const QFont font = index.data(Qt::FontRole).isValid()
                         ? index.data(Qt::FontRole).value<QFont>().resolve(option.font)
                         : option.font;
  const QRect words = QFontMetrics(font).boundingRect(
      QRect(0, 0, std::max(width - kPad, 40), 10000), Qt::TextWordWrap, index.data().toString());
  return {width, std::max(words.height(), kBox) + 2 * kPad};
}

void WrappedRows::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
  QStyledItemDelegate::paint(painter, option, index);  // ground, halo, focus
  QStyleOptionViewItem row = option;
  QStyledItemDelegate::initStyleOption(&row, index);
  painter->save();
  if (hasBox(index)) {
    QStyleOptionButton box;
    box.rect = boxIn(option.rect);
    box.state = QStyle::State_Enabled |
                (row.checkState == Qt::Checked ? QStyle::State_On : QStyle::State_Off);
    tree_->style()->drawPrimitive(QStyle::PE_IndicatorItemViewItemCheck, &box, painter, tree_);
  }
  const bool chosen = option.state.testFlag(QStyle::State_Selected);
  painter->setFont(row.font);
  painter->setPen(row.palette.color(chosen ? QPalette::HighlightedText : QPalette::Text));
  painter->drawText(option.rect.adjusted(indentOf(index), kPad, -kPad, -kPad),
                    Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, row.text);
  painter->restore();
}

bool WrappedRows::editorEvent(QEvent* event, QAbstractItemModel* model,
                              const QStyleOptionViewItem& option, const QModelIndex& index) {
  if (!hasBox(index) || !isToggle(*event, boxIn(option.rect))) return false;
  const bool on = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
  return model->setData(index, on ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

}  // namespace creasewright
