#pragma once

#include <QStyledItemDelegate>

namespace creasewright {

/// Paints a suggestion as a card: folded picture, small net, name, blank and sheet.
class GalleryCard : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;
};

}  // namespace creasewright
