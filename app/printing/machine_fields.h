#pragma once

#include <QWidget>

#include "papers/template/export.h"

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;

namespace creasewright {

/// How a net is written for a machine: form of the scores, kerf, sheet, words.
class MachineFields : public QWidget {
  Q_OBJECT

 public:
  explicit MachineFields(QWidget* parent = nullptr);

  [[nodiscard]] MachineExport chosen() const;
  [[nodiscard]] QComboBox& scores() { return *scores_; }
  [[nodiscard]] QDoubleSpinBox& outerKerf() { return *outer_; }
  [[nodiscard]] QDoubleSpinBox& innerKerf() { return *inner_; }
  [[nodiscard]] QComboBox& sheet() { return *sheet_; }

 private:
  QComboBox* scores_;
  QDoubleSpinBox* outer_;
  QDoubleSpinBox* inner_;
  QComboBox* sheet_;
  QCheckBox* outlines_;
};

}  // namespace creasewright
