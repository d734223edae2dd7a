#include "printing/printed_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/text.h"
#include "widgets/labelled_field.h"
#include "widgets/length_edit.h"

namespace creasewright {

PrintedFields::PrintedFields(Unit unit, QWidget* parent)
    : QWidget(parent),
      unit_(unit),
      bleed_(new LengthEdit(this)),
      sides_(new QComboBox(this)),
      cuts_(new QCheckBox(tr("Draw the cut lines"), this)),
      black_(new QCheckBox(tr("Black and white"), this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  bleed_->setUnit(unit);
  bleed_->setLength(Length::mm(PrintedForm{}.bleed));
  sides_->addItem(tr("Front of the card"), static_cast<int>(PrintedSides::Face));
  sides_->addItem(tr("Back of the card, mirrored places"), static_cast<int>(PrintedSides::Back));
  sides_->addItem(tr("Front and back in turn"), static_cast<int>(PrintedSides::Both));
  cuts_->setChecked(true);
  addLabelledField(column, tr("Which side"), sides_);
  addLabelledField(column, tr("Colour beyond the cuts"), bleed_);
  column->addWidget(cuts_);
  black_->setToolTip(tr("For a printer without colours."));
  column->addWidget(black_);
  connect(bleed_, &LengthEdit::lengthEdited, this, [this] {
    const double bleed = bleed_->length().mm();
    bleed_->setComplaint(bleed >= 0 && bleed <= kMostBleed
                             ? QString()
                             : tr("Colour may run from 0 to %1 beyond the cuts.")
                                   .arg(lengthText(Length::mm(kMostBleed), unit_)));
    emit changed();
  });
  connect(sides_, &QComboBox::currentIndexChanged, this, &PrintedFields::changed);
  connect(cuts_, &QCheckBox::toggled, this, &PrintedFields::changed);
  connect(black_, &QCheckBox::toggled, this, &PrintedFields::changed);
}

PrintedForm PrintedFields::chosen() const {
  return {std::clamp(bleed_->length().mm(), 0.0, kMostBleed), cuts_->isChecked(),
          static_cast<PrintedSides>(sides_->currentData().toInt()), black_->isChecked()};
}

}  // namespace creasewright
