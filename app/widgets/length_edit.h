#pragma once

#include <QLineEdit>
#include <optional>

#include "units/length.h"

namespace creasewright {

/// A field for a length, typed in any form parseLength reads. Says at once what was understood, and
/// keeps what the person typed while the field has the focus.
class LengthEdit : public QLineEdit {
  Q_OBJECT

 public:
  explicit LengthEdit(QWidget* parent = nullptr);

  /// The unit shown, and of a number typed without one.
  void setUnit(Unit unit);
  /// Shows `length`, unless what is being typed already means it.
  void setLength(Length length);
  [[nodiscard]] Length length() const { return length_; }
  /// How far the up and down keys go.
  void setStep(Length step) { step_ = step; }
  /// A sentence about a value that can be read but does not work; empty takes it away.
  void setComplaint(const QString& sentence);
  [[nodiscard]] bool isWrong() const { return wrong_; }
  /// Complains about a length beyond the limits. False when what is typed is wrong: the field then
  /// has the focus.
  bool requireWithin(Length least, Length most, const QString& complaint);

 signals:
  /// The typed text reads as this length.
  void lengthEdited(Length length);
  void focused(bool in);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void readTyped(const QString& typed);
  void showLength();
  void showState();
  void stepBy(int steps);

  Length length_;
  Length step_ = Length::nanometres(1'000'000);
  Unit unit_ = Unit::Millimetre;
  QString unreadable_;
  QString complaint_;
  bool wrong_ = false;
};

}  // namespace creasewright
