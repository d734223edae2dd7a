#pragma once

#include <QStyledItemDelegate>

class QTreeView;

namespace creasewright {

/// Rows of a tree with one column whose words wrap at the tree's width instead of being scrolled,
/// with a box to tick before them where they have one.
class WrappedRows : public QStyledItemDelegate {
  Q_OBJECT

 public:
  explicit WrappedRows(QTreeView* tree);

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;

 protected:
  void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;
  bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override;

 private:
  QTreeView* tree_;
};

}  // namespace creasewright
