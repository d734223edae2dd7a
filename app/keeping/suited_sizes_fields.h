#pragma once

#include <QWidget>
#include <array>
#include <optional>

#include "document/own_style.h"

class QCheckBox;

namespace creasewright {

class LengthEdit;

/// The smallest and the largest product that a style suits, or any.
class SuitedSizesFields : public QWidget {
  Q_OBJECT

 public:
  /// `near` is a product to begin with where there are no sizes yet.
  SuitedSizesFields(const std::optional<SuitedSizes>& sizes, const std::optional<Product>& near,
                    Unit unit, QWidget* parent = nullptr);

  /// Nothing: any product. False in `well` when a field cannot be read or the smallest is larger
  /// than the largest; the field then says so.
  [[nodiscard]] std::optional<SuitedSizes> sizes(bool& well);

 private:
  QCheckBox* only_;
  QWidget* grid_;
  std::array<LengthEdit*, 3> least_{};
  std::array<LengthEdit*, 3> most_{};
};

}  // namespace creasewright
