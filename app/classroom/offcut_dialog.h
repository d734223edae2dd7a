#pragma once

#include <QDialog>

#include "kits/kit_plan.h"

class QCheckBox;

namespace creasewright {

/// What the offcuts of a plan could give, to choose from.
class OffcutDialog : public QDialog {
  Q_OBJECT

 public:
  /// Of a plan whose findings are known.
  OffcutDialog(const KitPlan& plan, Unit unit, QWidget* parent = nullptr);
  void tick(int row);
  /// Those that were ticked.
  [[nodiscard]] std::vector<OffcutUse> chosen() const;

 private:
  std::vector<OffcutUse> uses_;
  std::vector<QCheckBox*> ticks_;  ///< one for each of uses_
};

}  // namespace creasewright
