#include "classroom/blank_dialog.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "base/file_limits.h"
#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "stockroom/card_box.h"
#include "widgets/answer_row.h"

namespace creasewright {

namespace {

constexpr Length kSmallestBlank = Length::nanometres(5'000'000);
constexpr Length kLargestBlank = Length::nanometres(2'000'000'000);

/// A size as people of the unit would start from: 4 x 6 in, 10 x 15 cm.
std::pair<Length, Length> usualSize(Unit unit) {
  return unit == Unit::Inch
             ? std::pair{Length::inches(4), Length::inches(6)}
             : std::pair{Length::nanometres(100'000'000), Length::nanometres(150'000'000)};
}

}  // namespace

BlankDialog::BlankDialog(const Card& card, Unit unit, QWidget* parent)
    : QDialog(parent),
      unit_(unit),
      name_(new QLineEdit(this)),
      width_(new LengthEdit(this)),
      height_(new LengthEdit(this)),
      card_(new CardBox(this)) {
  name_->setMaxLength(static_cast<int>(kLongestTitle));
  setWindowTitle(tr("A plain blank"));
  blank_.card = card;
  std::tie(blank_.width, blank_.height) = usualSize(unit);
  name_->setText(tr("Panel"));
  name_->setMaxLength(60);
  card_->setCard(card, cardName(card));
  connect(card_, &CardBox::cardPicked, this, [this](const Card& picked) { blank_.card = picked; });
  auto* layout = new QVBoxLayout(this);
  auto* form = new QFormLayout;
  layout->addLayout(form);
  form->addRow(tr("Name"), name_);
  for (const auto& [label, field, length] : {std::tuple{tr("Width"), width_, &blank_.width},
                                             std::tuple{tr("Height"), height_, &blank_.height}}) {
    field->setUnit(unit);
    field->setLength(*length);
    form->addRow(label, field);
  }
  form->addRow(tr("Card"), card_);
  connect(addAnswerRow(layout, this, tr("Add")), &QPushButton::clicked, this, &BlankDialog::take);
}

/// A size that cannot be cut is told at its field, and the dialog stays.
void BlankDialog::take() {
  for (LengthEdit* field : {width_, height_})
    if (!field->requireWithin(
            kSmallestBlank, kLargestBlank,
            tr("A blank measures from %1 to %2 a side.")
                .arg(lengthText(kSmallestBlank, unit_), lengthText(kLargestBlank, unit_))))
      return;
  blank_.width = width_->length();
  blank_.height = height_->length();
  const QString name = name_->text().trimmed();
  blank_.name = (name.isEmpty() ? tr("Panel") : name).toStdString();
  accept();
}

}  // namespace creasewright
