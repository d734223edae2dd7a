#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <QPixmap>

#include "shelf/shelf_folder.h"

namespace creasewright {

/// The shelf's designs that match some words, with pictures drawn when they are first seen.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum class Order { Newest, Title, Style, LastUse };
  static constexpr QSize pictureSize{150, 110};

  explicit ShelfModel(ShelfFolder folder, QObject* parent = nullptr);

  void reload();
  /// All words must occur in title, style, product, tags or notes.
  void setWords(const QString& words);
  void setOrder(Order order);
  [[nodiscard]] const ShelfEntry& entry(const QModelIndex& index) const;
  [[nodiscard]] QString title(const QModelIndex& index) const;
  /// Files among those shown that hold no design.
  [[nodiscard]] int unreadable() const;
  [[nodiscard]] int total() const { return static_cast<int>(entries_.size()); }
  /// Every readable design, for a bundle.
  [[nodiscard]] std::vector<Design> designs() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

 private:
  void filter();
  [[nodiscard]] QPixmap picture(const ShelfEntry& entry) const;

  ShelfFolder folder_;
  std::vector<ShelfEntry> entries_;
  std::vector<QString> searched_;  ///< what words are looked for in, by entry
  std::vector<std::size_t> shown_;
  QString words_;
  Order order_ = Order::Newest;
  mutable QHash<QString, QPixmap> pictures_;
};

}  // namespace creasewright
