#pragma once

#include <QDialog>

#include "kits/class_kit.h"
#include "widgets/length_edit.h"

class QLineEdit;

namespace creasewright {

class CardBox;

/// Asks for a plain rectangle that goes into every bag.
class BlankDialog : public QDialog {
  Q_OBJECT

 public:
  BlankDialog(const Card& card, Unit unit, QWidget* parent = nullptr);
  [[nodiscard]] const PlainBlank& blank() const { return blank_; }

 private:
  void take();

  Unit unit_;
  PlainBlank blank_;
  QLineEdit* name_;
  LengthEdit* width_;
  LengthEdit* height_;
  CardBox* card_;
};

}  // namespace creasewright
