#pragma once

#include <QWidget>
#include <optional>

#include "pages/page_setup.h"
#include "units/length.h"

class QLabel;

namespace creasewright {

class LengthEdit;

/// How long the two bars of the calibration page came out of the printer, and what that means.
class CalibrationFields : public QWidget {
  Q_OBJECT

 public:
  explicit CalibrationFields(Unit unit, QWidget* parent = nullptr);

  /// Shows what is kept for a page's bars: as long as drawn where nothing is.
  void show(Length across, Length down, const PrintCorrection& kept);

  [[nodiscard]] LengthEdit& across() { return *across_; }
  [[nodiscard]] LengthEdit& down() { return *down_; }

 signals:
  void corrected(PrintCorrection correction);  ///< the person typed numbers that make sense

 private:
  std::optional<PrintCorrection> read();

  Unit unit_;
  Length drawnAcross_;
  Length drawnDown_;
  LengthEdit* across_;
  LengthEdit* down_;
  QLabel* said_;
};

}  // namespace creasewright
