#pragma once

#include <QWidget>
#include <optional>

#include "patterns/paper_pattern.h"
#include "units/length.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QVBoxLayout;
class QLabel;
class QSpinBox;
class QToolButton;

namespace creasewright {

class LengthEdit;

/// What card is printed with: none, one of the patterns with its repeat, turn, side and colours, or
/// a picture file of the person's with its width, shift and turn.
class PatternPicker : public QWidget {
  Q_OBJECT

 public:
  /// `title` names the button for screen readers; `sides` offers the back as well.
  PatternPicker(const QString& title, bool sides, QWidget* parent);

  void setUnit(Unit unit);
  void setPattern(const std::optional<PaperPattern>& pattern, bool behind);

  /// Takes a picture file of the person's; what is wrong with it is told below.
  void takePicture(const QString& path);
  /// What was wrong with the last file; empty where nothing was.
  [[nodiscard]] QString complaint() const;

 signals:
  /// `field` lets typing on in one field merge into one step; empty for a choice of its own.
  void patternPicked(const std::optional<PaperPattern>& pattern, bool behind, const QString& field);

 private:
  void fillMenu();
  void makeDetails(bool sides);
  void makePictureFields(QFormLayout* form);
  void showColours();
  void showPicture();
  void chooseFile();
  void pick(const std::optional<PaperPattern>& pattern, const QString& field = {});
  void pickColour(std::size_t which, const std::optional<Colour>& colour);

  QToolButton* button_;
  QWidget* details_;
  QLabel* refused_;
  LengthEdit* scale_ = nullptr;
  QLabel* scaleTitle_ = nullptr;
  QCheckBox* plate_ = nullptr;
  QCheckBox* tiled_ = nullptr;
  QWidget* shifts_ = nullptr;
  LengthEdit* right_ = nullptr;
  LengthEdit* up_ = nullptr;
  QSpinBox* turn_ = nullptr;
  QComboBox* side_ = nullptr;
  QWidget* colours_ = nullptr;
  QVBoxLayout* colourColumn_ = nullptr;
  std::optional<PaperPattern> pattern_;
  bool behind_ = false;
};

}  // namespace creasewright
