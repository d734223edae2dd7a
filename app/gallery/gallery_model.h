#pragma once

#include <QAbstractListModel>
#include <QImage>
#include <vector>

#include "document/suggest.h"

namespace creasewright {

/// The suggestions for a product as a list: name, words about each for people and screen readers,
/// and two pictures.
class GalleryModel : public QAbstractListModel {
  Q_OBJECT

 public:
  enum Roles {
    DetailRole = Qt::UserRole,  ///< blank sizes and sheets, two lines
    FoldedRole,                 ///< QImage
    NetRole,                    ///< QImage
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
    QImage folded;
    QImage net;
  };
  [[nodiscard]] QString detail(const Suggestion& suggestion) const;

  std::vector<Entry> entries_;
  std::string chosen_;
  Unit unit_ = Unit::Millimetre;
  double devicePixelRatio_ = 1;
};

}  // namespace creasewright
