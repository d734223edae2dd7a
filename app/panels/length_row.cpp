#include "panels/length_row.h"

#include <QGridLayout>
#include <QLabel>
#include <QStyle>

namespace creasewright {

namespace {

constexpr int kFieldWidth = 112;

}  // namespace

LengthRow::LengthRow(const QString& label, QWidget* parent)
    : QWidget(parent), field_(new LengthEdit(this)), line_(new QLabel(this)) {
  auto* title = new QLabel(label, this);
  title->setBuddy(field_);
  title->setWordWrap(true);
  field_->setAccessibleName(label);
  field_->setFixedWidth(kFieldWidth);
  line_->setProperty("quiet", true);
  line_->setWordWrap(true);
  line_->hide();
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setHorizontalSpacing(8);
  grid->setVerticalSpacing(2);
  grid->addWidget(title, 0, 0);
  grid->addWidget(field_, 0, 1);
  grid->addWidget(line_, 1, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  connect(field_, &LengthEdit::sentenceChanged, this, [this](const QString& sentence) {
    sentence_ = sentence;
    showNote();
  });
}

void LengthRow::setNote(const QString& note) {
  note_ = note;
  showNote();
}

void LengthRow::setComplaint(const QString& sentence) { field_->setComplaint(sentence); }

void LengthRow::setLit(bool lit) {
  if (field_->property("lit").toBool() != lit) {
    field_->setProperty("lit", lit);
    field_->style()->unpolish(field_);
    field_->style()->polish(field_);
  }
}

void LengthRow::enterEvent(QEnterEvent*) { emit pointedAt(true); }
void LengthRow::leaveEvent(QEvent*) { emit pointedAt(false); }

void LengthRow::showNote() {
  const bool wrong = !sentence_.isEmpty();
  line_->setText(wrong ? sentence_ : note_);
  if (line_->property("problem").toBool() != wrong) {
    line_->setProperty("problem", wrong);
    line_->setProperty("quiet", !wrong);
    line_->style()->unpolish(line_);
    line_->style()->polish(line_);
  }
  line_->setVisible(!line_->text().isEmpty());
}

}  // namespace creasewright
