#pragma once

#include <QAbstractListModel>
#include <QPixmap>
#include <vector>

#include "document/suggest.h"

namespace creasewright {

/// The suggestions for a product as a list: name, words about each for people and screen readers,
/// and two pictures, drawn when they are first asked for.
class GalleryModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Roles {
    DetailRole = Qt::UserRole,  ///< blank sizes and sheets, two lines
    FoldedRole,                 ///< QPixmap
    NetRole,                    ///< QPixmap
    FitsRole,                   ///< bool: fits a sheet of the stock
    ChosenRole,                 ///< bool: the style of the design in hand
    OwnRole                     ///< bool: a style of the person's own
  };
  static constexpr QSize kFoldedSize{188, 132};
  static constexpr QSize kNetSize{64, 56};

  using QAbstractListModel::QAbstractListModel;

  void show(std::vector<Suggestion> suggestions, std::string_view chosenStyle, Unit unit,
            double devicePixelRatio);
  [[nodiscard]] const Suggestion& at(int row) const {
    return entries_[static_cast<std::size_t>(row)].suggestion;
  }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

 private:
  struct Entry {
    Suggestion suggestion;
    QPixmap folded;
    QPixmap net;
  };
  [[nodiscard]] QString detail(const Suggestion& suggestion) const;
  [[nodiscard]] QPixmap picture(Entry& entry, bool folded) const;

  mutable std::vector<Entry> entries_;  // pictures are filled in when asked for
  std::string chosen_;
  Unit unit_ = Unit::Millimetre;
  double devicePixelRatio_ = 1;
};

}  // namespace creasewright
