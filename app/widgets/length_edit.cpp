#include "widgets/length_edit.h"

#include <QKeyEvent>
#include <QStyle>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "units/length_text.h"

namespace creasewright {

LengthEdit::LengthEdit(QWidget* parent) : QLineEdit(parent) {
  setMaxLength(40);
  showLength();
  connect(this, &QLineEdit::textEdited, this, &LengthEdit::readTyped);
}

void LengthEdit::setUnit(Unit unit) {
  unit_ = unit;
  unreadable_.clear();
  showLength();
}

void LengthEdit::setLength(Length length) {
  const bool typing = hasFocus() && isModified();
  if (typing && length == length_) {
    return;
  }
  length_ = length;
  unreadable_.clear();
  showLength();
}

void LengthEdit::setComplaint(const QString& sentence) {
  complaint_ = sentence;
  showState();
}

bool LengthEdit::requireWithin(Length least, Length most, const QString& complaint) {
  setComplaint(length_ >= least && length_ <= most ? QString() : complaint);
  if (wrong_) {
    setFocus();
  }
  return !wrong_;
}

void LengthEdit::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down) {
    stepBy(event->key() == Qt::Key_Up ? 1 : -1);
    return;
  }
  QLineEdit::keyPressEvent(event);
}

void LengthEdit::focusInEvent(QFocusEvent* event) {
  QLineEdit::focusInEvent(event);
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason) {
    selectAll();
  }
  emit focused(true);
}

void LengthEdit::focusOutEvent(QFocusEvent* event) {
  QLineEdit::focusOutEvent(event);
  if (event->reason() != Qt::PopupFocusReason) {
    unreadable_.clear();
    showLength();
  }
  emit focused(false);
}

void LengthEdit::readTyped(const QString& typed) {
  const auto parsed = parseLength(typed.trimmed().toStdString(), unit_);
  unreadable_ = parsed ? QString() : problemSentence(parsed.problem(), unit_);
  if (parsed) {
    length_ = *parsed;
    emit lengthEdited(length_);
  }
  showState();
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
}

void LengthEdit::stepBy(int steps) {
  length_ = length_ + step_ * steps;
  unreadable_.clear();
  showLength();
  emit lengthEdited(length_);
}

}  // namespace creasewright
