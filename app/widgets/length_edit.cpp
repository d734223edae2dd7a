#include "widgets/length_edit.h"

#include <QApplication>
#include <QKeyEvent>
#include <QStyle>
#include <optional>
#include <string>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "units/length_text.h"

namespace creasewright {

namespace {

/// What a sum comes to; nothing where it is none. Three sides typed at once (`105x32x22mm`) are not
/// multiplied.
std::optional<Length> sumOf(const std::string& words, Unit unit, const FormulaNames& names) {
  if (words.find_first_of("+-*/") == std::string::npos) return std::nullopt;
  const Result<FormulaValue> value =
      evaluateFormula(words, [&](std::string_view name) -> std::optional<Result<Length>> {
        return names ? names(name) : std::nullopt;
      });
  if (!value || value->raw < 0) return std::nullopt;
  if (value->isLength) return Length::nanometres(value->raw);
  constexpr double kMillion = 1e6;
  const Result<Length> one = parseLength("1", unit);
  return Length::mm(one->mm() * static_cast<double>(value->raw) / kMillion);
}

}  // namespace

LengthEdit::LengthEdit(QWidget* parent) : QLineEdit(parent) {
  setMaxLength(80);
  showLength();
  connect(this, &QLineEdit::textEdited, this, [this](const QString& typed) {
    done_ = false;
    (void)read(typed);
  });
}

void LengthEdit::setUnit(Unit unit) {
  if (unit != unit_) {
    unit_ = unit;
    restore();
  }
}

void LengthEdit::setLength(Length length) {
  if (!isModified() || length != length_) {
    length_ = length;
    restore();
  }
}

void LengthEdit::setComplaint(const QString& sentence) {
  complaint_ = sentence;
  showState();
}

bool LengthEdit::commit() {
  if (!isModified()) return true;
  done_ = true;
  const auto parsed = read(text());
  if (!parsed) return false;
  const bool changed = *parsed != length_;
  length_ = *parsed;
  restore();
  if (changed) emit lengthEdited(length_);
  return true;
}

void LengthEdit::commitFocused() {
  if (auto* field = qobject_cast<LengthEdit*>(QApplication::focusWidget())) field->commit();
}

bool LengthEdit::requireWithin(Length least, Length most, const QString& complaint) {
  if (!commit()) {
    setFocus();
    return false;
  }
  setComplaint(length_ >= least && length_ <= most ? QString() : complaint);
  if (wrong_) setFocus();
  return !wrong_;
}

void LengthEdit::keyPressEvent(QKeyEvent* event) {
  switch (event->key()) {
    case Qt::Key_Up:
      return stepBy(1);
    case Qt::Key_Down:
      return stepBy(-1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (!commit()) return;  // in a dialog the key would press its button
      break;
    case Qt::Key_Escape:
      if (isModified()) return restore();
      break;
  }
  QLineEdit::keyPressEvent(event);
}

void LengthEdit::focusInEvent(QFocusEvent* event) {
  QLineEdit::focusInEvent(event);
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason)
    selectAll();
  emit focused(true);
}

void LengthEdit::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason) commit();
  emit focused(false);
}

Result<Length> LengthEdit::read(const QString& typed) {
  const std::string words = typed.trimmed().toStdString();
  Result<Length> parsed = parseLength(words, unit_);
  if (!parsed)
    if (const auto sum = sumOf(words, unit_, names_)) parsed = *sum;
  unreadable_ = parsed ? QString() : problemSentence(parsed.problem(), unit_);
  showState();
  return parsed;
}

/// The length as it is, in place of what was typed.
void LengthEdit::restore() {
  unreadable_.clear();
  showLength();
}

void LengthEdit::showLength() {
  setText(editableLength(length_, unit_));
  setModified(false);
  setCursorPosition(0);
  showState();
}

void LengthEdit::showState() {
  const bool wrong = !unreadable_.isEmpty() || !complaint_.isEmpty();
  setToolTip(unreadable_.isEmpty() ? complaint_ : unreadable_);
  setAccessibleDescription(toolTip());
  if (wrong != wrong_) {
    wrong_ = wrong;
    setProperty("wrong", wrong);
    style()->unpolish(this);
    style()->polish(this);
  }
  const QString aloud = done_ || unreadable_.isEmpty() ? toolTip() : QString();
  if (aloud != told_) {
    told_ = aloud;
    emit sentenceChanged(told_);
  }
}

void LengthEdit::stepBy(int steps) {
  if (!commit()) return;
  length_ = length_ + step_ * steps;
  restore();
  emit lengthEdited(length_);
}

}  // namespace creasewright
