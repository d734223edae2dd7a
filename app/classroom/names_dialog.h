#pragma once

#include <QDialog>

#include "kits/class_kit.h"
#include "widgets/length_edit.h"

class QPlainTextEdit;

namespace creasewright {

/// Asks for the takers' names and the size of the labels they are printed on.
class NamesDialog : public QDialog {
  Q_OBJECT

 public:
  NamesDialog(const ClassKit& kit, Unit unit, QWidget* parent = nullptr);
  [[nodiscard]] std::vector<std::string> names() const;
  [[nodiscard]] Length labelWidth() const { return width_->length(); }
  [[nodiscard]] Length labelHeight() const { return height_->length(); }

 private:
  void take();

  Unit unit_;
  QPlainTextEdit* names_;
  LengthEdit* width_;
  LengthEdit* height_;
};

}  // namespace creasewright
