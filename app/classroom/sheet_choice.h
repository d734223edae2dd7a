#pragma once

#include <QWidget>

#include "kits/build_kit.h"

class QComboBox;

namespace creasewright {

/// From which sheets a class is cut: one or two of the person's list, all of them, or those that
/// were saved with the kit.
class SheetChoice : public QWidget {
  Q_OBJECT

 public:
  explicit SheetChoice(Unit unit, QWidget* parent = nullptr);

  /// Reads the person's list anew.
  void readList();
  /// Offers the sheets that a saved kit brings; empty = none.
  void offerSaved(std::vector<StockSheet> saved);
  /// What a class takes first: the saved sheets, else one of the list that holds what the kit makes
  /// (nullptr = not known).
  [[nodiscard]] std::vector<StockSheet> firstFor(const BuiltKit* kit) const;
  /// Chooses what gives these sheets; those that nothing gives are offered as saved with the kit.
  void choose(const std::vector<StockSheet>& sheets);
  [[nodiscard]] std::vector<StockSheet> sheets() const;

 signals:
  void changed();

 private:
  void fill();
  void chooseRows(int first, int second);
  [[nodiscard]] int listed(const StockSheet& sheet) const;

  Unit unit_;
  std::vector<StockSheet> stock_;  ///< the person's own list
  std::vector<StockSheet> saved_;  ///< with the kit
  QComboBox* first_;
  QComboBox* second_;
};

}  // namespace creasewright
