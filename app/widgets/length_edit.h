#pragma once

#include <QLineEdit>

#include "base/result.h"
#include "units/formula.h"
#include "units/length.h"

namespace creasewright {

/// A field for a length, typed in any form parseLength reads, or as a sum (units/formula.h; bare
/// numbers alone count in the field's unit). What is typed counts when it is done:
/// by Enter, by leaving the field, or by commit(). Until then, and for as long as it cannot be
/// read, it stands in the field and changes nothing; Esc brings the length back.
class LengthEdit : public QLineEdit {
  Q_OBJECT

 public:
  explicit LengthEdit(QWidget* parent = nullptr);

  /// The unit shown, and of a number typed without one.
  void setUnit(Unit unit);
  /// Shows `length`. What is being typed stays while the length is still the one it began with.
  void setLength(Length length);
  [[nodiscard]] Length length() const { return length_; }
  /// What names stand for in sums such as `depth / 2 - 3 mm`.
  void setNames(FormulaNames names) { names_ = std::move(names); }
  /// How far the up and down keys go.
  void setStep(Length step) { step_ = step; }
  /// A sentence about a value that can be read but does not work; empty takes it away.
  void setComplaint(const QString& sentence);
  [[nodiscard]] bool isWrong() const { return wrong_; }
  /// Takes over what is typed. False when it cannot be read: it stays, with its sentence.
  bool commit();
  /// commit() of the field that has the focus, if one has: before anything reads the numbers.
  static void commitFocused();
  /// Complains about a length beyond the limits. False when what is typed is wrong: the field then
  /// has the focus.
  bool requireWithin(Length least, Length most, const QString& complaint);

 signals:
  /// The person has given this length.
  void lengthEdited(Length length);
  /// What is wrong with the field, to be shown beside it; empty when nothing is.
  void sentenceChanged(const QString& sentence);
  void focused(bool in);

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  Result<Length> read(const QString& typed);
  void restore();
  void showLength();
  void showState();
  void stepBy(int steps);

  FormulaNames names_;
  Length length_;
  Length step_ = Length::nanometres(1'000'000);
  Unit unit_ = Unit::Millimetre;
  QString unreadable_;  ///< why the typed text cannot be read
  bool done_ = true;    ///< whether the person was done with it: only then it is told aloud
  QString complaint_;
  QString told_;
  bool wrong_ = false;
};

}  // namespace creasewright
