#pragma once

#include <QComboBox>
#include <optional>
#include <vector>

#include "stock/punches.h"
#include "styles/parameters.h"
#include "units/length.h"

namespace creasewright {

/// The punches that the person owns, to choose one that makes a label or a layer; the first row
/// leaves it to the knife, the last one is a punch of its own shape and size.
class PunchBox : public QComboBox {
  Q_OBJECT

 public:
  explicit PunchBox(QWidget* parent = nullptr);

  /// Shows the punch that makes what has this shape and size, or the first row.
  void setPunched(bool punched, const Punch& made, Unit unit);

 signals:
  /// nullptr: it is cut.
  void punchPicked(const Punch* punch);

 protected:
  void showPopup() override;

 private:
  void offer();

  std::vector<Punch> punches_;
  bool punched_ = false;
  Punch made_;
  Unit unit_ = Unit::Millimetre;
};

/// The punch that makes what these parameters tell of a label or layer.
Punch punchOf(const Parameters& parameters);
/// Gives them the shape and size of a punch; nullptr leaves it to the knife.
void takePunch(Parameters& parameters, const Punch* punch);

}  // namespace creasewright
