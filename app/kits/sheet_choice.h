#pragma once

#include <QWidget>

#include "kits/class_kit.h"

class QComboBox;

namespace creasewright {

/// From which sheets a class is cut: one or two of the person's list, all of them, or those that
/// were saved with the kit.
class SheetChoice : public QWidget {
  Q_OBJECT

 public:
  explicit SheetChoice(Unit unit, QWidget* parent = nullptr);

  /// Reads the person's list anew and chooses a sheet that holds what the kit makes; a kit that was
  /// saved with sheets brings these.
  void offer(const ClassKit& kit);
  [[nodiscard]] std::vector<StockSheet> sheets() const;

 signals:
  void changed();

 private:
  void fill();

  Unit unit_;
  std::vector<StockSheet> stock_;  ///< the person's own list
  std::vector<StockSheet> saved_;  ///< with the kit
  QComboBox* first_;
  QComboBox* second_;
};

}  // namespace creasewright
