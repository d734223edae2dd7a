#pragma once

#include <QDialog>
#include <optional>

#include "kits/pricing.h"

class QCheckBox;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace creasewright {

/// Asks what a maker charges with; without the tick no prices stand on the papers.
class PriceDialog : public QDialog {
  Q_OBJECT

 public:
  explicit PriceDialog(const std::optional<Pricing>& pricing, QWidget* parent = nullptr);
  /// As it was accepted.
  [[nodiscard]] std::optional<Pricing> pricing() const { return pricing_; }

  [[nodiscard]] QCheckBox& asked() { return *asked_; }
  [[nodiscard]] QLineEdit& rate() { return *rate_; }
  [[nodiscard]] QLineEdit& classCosts() { return *classCosts_; }
  [[nodiscard]] QSpinBox& margin() { return *margin_; }
  /// What stands against the amounts; empty when nothing does.
  [[nodiscard]] QString complaint() const;
  void take();

 private:
  void showAsked();

  std::optional<Pricing> pricing_;
  QCheckBox* asked_;
  QWidget* fields_;
  QLineEdit* currency_;
  QLineEdit* rate_;
  QLineEdit* classCosts_;
  QSpinBox* overhead_;
  QSpinBox* margin_;
  QSpinBox* fee_;
  QLabel* complaint_;
};

}  // namespace creasewright
