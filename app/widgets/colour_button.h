#pragma once

#include <QToolButton>
#include <optional>

#include "base/colour.h"

namespace creasewright {

/// One colour to choose: a named one, any other, or none.
class ColourButton : public QToolButton {
  Q_OBJECT

 public:
  /// `none` is what no colour is called: `Plain`.
  ColourButton(const QString& none, QWidget* parent);

  void setColour(const std::optional<Colour>& colour);
  [[nodiscard]] const std::optional<Colour>& colour() const { return colour_; }

 signals:
  void colourPicked(const std::optional<Colour>& colour);

 private:
  void fillMenu();
  void pick(const std::optional<Colour>& colour);
  void askForOther();

  QString none_;
  std::optional<Colour> colour_;
};

}  // namespace creasewright
