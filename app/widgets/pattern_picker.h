#pragma once

#include <QWidget>
#include <optional>

#include "patterns/paper_pattern.h"
#include "units/length.h"

class QComboBox;
class QGridLayout;
class QSpinBox;
class QToolButton;

namespace creasewright {

class LengthEdit;

/// What card is printed with: none or one of the patterns, with its repeat, turn, side and colours.
class PatternPicker : public QWidget {
  Q_OBJECT

 public:
  /// `title` names the button for screen readers; `sides` offers the back as well.
  PatternPicker(const QString& title, bool sides, QWidget* parent);

  void setUnit(Unit unit);
  void setPattern(const std::optional<PaperPattern>& pattern, bool behind);

 signals:
  /// `field` lets typing on in one field merge into one step; empty for a choice of its own.
  void patternPicked(const std::optional<PaperPattern>& pattern, bool behind, const QString& field);

 private:
  void fillMenu();
  void makeDetails(bool sides);
  void showColours();
  void pick(const std::optional<PaperPattern>& pattern, const QString& field = {});
  void pickColour(std::size_t which, const std::optional<Colour>& colour);

  QToolButton* button_;
  QWidget* details_;
  LengthEdit* scale_ = nullptr;
  QSpinBox* turn_ = nullptr;
  QComboBox* side_ = nullptr;
  QWidget* colours_ = nullptr;
  QGridLayout* colourGrid_ = nullptr;
  std::optional<PaperPattern> pattern_;
  bool behind_ = false;
};

}  // namespace creasewright
