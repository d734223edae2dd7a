#pragma once

#include <QSortFilterProxyModel>

#include "document/suggest.h"

namespace creasewright {

/// Keeps the cards that meet a wish and whose name, summary or products hold the words typed.
class GalleryFilter : public QSortFilterProxyModel {
  Q_OBJECT

 public:
  using QSortFilterProxyModel::QSortFilterProxyModel;

  void setWish(const Wish& wish);
  void setWords(const QString& words);

 protected:
  [[nodiscard]] bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

 private:
  Wish wish_;
  QString words_;
};

}  // namespace creasewright
