#pragma once

#include <QAbstractListModel>
#include <QHash>
#include <QPixmap>
#include <QSet>
#include <QTimer>

#include "shelf/shelf_folder.h"
#include "shelf/shelf_reader.h"

namespace creasewright {

/// The shelf's designs that match some words, with pictures drawn when they are first seen. Files
/// are read and pictures drawn beside the window (ShelfReader); what is quick is there at once.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum class Order { Newest, Title, Style, LastUse };
  static constexpr QSize kPictureSize{150, 110};

  explicit ShelfModel(ShelfFolder folder, QObject* parent = nullptr);

  void reload();
  /// Whether files are left to read. Waits for them, at most so long.
  bool isReading(std::chrono::milliseconds patience = {});
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
  /// What the reader has ready.
  void take(std::chrono::milliseconds patience);
  [[nodiscard]] QString searchTextOf(const ShelfEntry& entry) const;
  [[nodiscard]] QPixmap picture(const ShelfEntry& entry) const;

  ShelfFolder folder_;
  mutable ShelfReader reader_;
  QTimer timer_;
  std::size_t unread_ = 0;
  mutable QSet<QString> drawing_;  // asked for
  std::vector<ShelfEntry> entries_;
  std::vector<QString> searched_;  ///< what words are looked for in, by entry
  std::vector<std::size_t> shown_;
  QString words_;
  Order order_ = Order::Newest;
  mutable QHash<QString, QPixmap> pictures_;
};

}  // namespace creasewright
