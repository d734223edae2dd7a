#pragma once

#include <QWidget>

#include "pages/template_pages.h"
#include "units/length.h"

class QCheckBox;
class QComboBox;

namespace creasewright {

class LengthEdit;

/// How printed papers are printed: bleed, side, cut lines, with or without colours.
class PrintedFields : public QWidget {
  Q_OBJECT

 public:
  explicit PrintedFields(Unit unit, QWidget* parent = nullptr);

  /// What is chosen; a bleed that cannot be is told, and the nearest that can be is taken.
  [[nodiscard]] PrintedForm chosen() const;

  [[nodiscard]] LengthEdit& bleed() { return *bleed_; }
  [[nodiscard]] QComboBox& sides() { return *sides_; }
  [[nodiscard]] QCheckBox& cuts() { return *cuts_; }
  [[nodiscard]] QCheckBox& black() { return *black_; }

 signals:
  void changed();

 private:
  Unit unit_;
  LengthEdit* bleed_;
  QComboBox* sides_;
  QCheckBox* cuts_;
  QCheckBox* black_;
};

}  // namespace creasewright
