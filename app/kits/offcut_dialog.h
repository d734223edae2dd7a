#pragma once

#include <QDialog>

#include "kits/offcut_uses.h"

class QCheckBox;

namespace creasewright {

/// What the offcuts of a plan could give, to choose from.
class OffcutDialog : public QDialog {
  Q_OBJECT

 public:
  OffcutDialog(const ClassKit& kit, const KitPlan& plan, std::vector<OffcutUse> uses, Unit unit,
               QWidget* parent = nullptr);
  void tick(int row);
  /// Those that were ticked.
  [[nodiscard]] std::vector<OffcutUse> chosen() const;

 private:
  std::vector<OffcutUse> uses_;
  std::vector<QCheckBox*> ticks_;  ///< one for each of uses_
};

}  // namespace creasewright
